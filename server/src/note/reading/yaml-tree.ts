import { isAlias, isMap, isScalar, isSeq, parseAllDocuments, type Document, type Node, type YAMLError } from 'yaml';
import type { Span } from '@sideport/schemas';
import { findComments } from './comments.ts';
import { beginsText, mend, type Mend } from './mend.ts';
import { widen } from './widen.ts';
import type { MapEntry, ScalarNode, Tree, TreeFault, TreeNode } from './tree.ts';

const options = {
  schema: 'failsafe',
  stringKeys: true,
  uniqueKeys: false,
  prettyErrors: false,
  logLevel: 'silent',
} as const;

/** How many slips of writing are mended so that the rest of the note can be read. */
const MENDS = 8;

/**
 * Reads any text as a tree. Never throws: a slip of writing becomes a fault, and the line that slipped is set aside
 * so that everything else is still read. Spans are UTF-16 offsets into `text`.
 */
export function readYamlTree(text: string): Tree {
  const faults: TreeFault[] = [];
  let source = text;
  let documents = parse(source);
  for (let i = 0; i < MENDS; i++) {
    const error = documents[0]?.errors[0];
    const mended: Mend | undefined = error === undefined ? undefined : mend(source, error, documents[0]);
    if (mended === undefined) break;
    faults.push(mended.fault);
    source = mended.source;
    documents = parse(source);
  }
  const walker = new Walker(source);
  const first = documents[0];
  const root = first?.contents == null ? null : walker.node(first.contents);
  for (const error of first?.errors ?? []) faults.push(walker.errorFault(error));
  if (documents.length > 1) faults.push(severalDocuments(text, documents[1]));
  if (root?.kind === 'scalar')
    faults.push({
      check: 'text-not-readable',
      message: 'This is not a note: expected lines of the form “field: value”, beginning with “opnote: 1”.',
      span: root.span,
    });
  return {
    root,
    comments: findComments(text, walker.scalarSpans),
    faults: onePerLine(text, [...faults, ...walker.faults]),
  };
}

function parse(source: string): Document[] {
  const documents = parseAllDocuments(source, options);
  return Array.isArray(documents) ? documents : [];
}

/** Turns the parser's nodes into our own, and collects what is refused. */
class Walker {
  readonly faults: TreeFault[] = [];
  readonly scalarSpans: Span[] = [];
  private readonly source: string;

  constructor(source: string) {
    this.source = source;
  }

  node(node: Node): TreeNode | null {
    this.refuseProperties(node);
    if (isScalar(node)) return this.scalar(node);
    if (isMap(node)) {
      const entries = this.entries(node.items);
      const last = entries.at(-1);
      return { kind: 'map', entries, span: this.upTo(node, last?.value?.span.end ?? last?.keySpan.end) };
    }
    if (isSeq(node)) {
      const items = node.items.map((item) => this.node(item as Node));
      return { kind: 'list', items, span: this.upTo(node, items.at(-1)?.span.end) };
    }
    if (isAlias(node)) {
      this.fault(
        'alias-refused',
        `“*${node.source}” copies a value from elsewhere by reference, which cannot be audited. Write the value itself.`,
        this.span(node),
      );
    }
    return null;
  }

  private entries(items: readonly { readonly key: unknown; readonly value: unknown }[]): MapEntry[] {
    const entries: MapEntry[] = [];
    const seen = new Map<string, Span>();
    for (const item of items) {
      const keyNode = item.key as Node;
      if (!isScalar(keyNode)) continue;
      this.refuseProperties(keyNode);
      const key = String(keyNode.value);
      const keySpan = this.span(keyNode);
      this.scalarSpans.push(keySpan);
      const value = item.value == null ? null : this.node(item.value as Node);
      if (key === '<<') {
        this.fault(
          'merge-key-refused',
          '“<<” merges fields from elsewhere, which cannot be audited. Write the fields themselves.',
          keySpan,
        );
      } else if (seen.has(key)) {
        this.fault(
          'field-given-twice',
          `“${key}” is written twice in the same place; the first one is kept. Delete one of them.`,
          keySpan,
        );
      } else {
        seen.set(key, keySpan);
        entries.push({ key, keySpan, value });
      }
    }
    return entries;
  }

  private scalar(
    node: Node & { readonly value: unknown; readonly type?: unknown; readonly source?: string },
  ): ScalarNode | null {
    const span = this.span(node);
    const style = styles[String(node.type)] ?? 'plain';
    const text = typeof node.value === 'string' ? node.value : '';
    if (style === 'plain' && text === '') return null;
    if ((style === 'folded' || style === 'literal') && text.trim() === '') {
      // ">3" is a sign of how far a text is indented; without a text it is the value itself.
      const written = this.source.slice(span.start, span.end).trim();
      if (/\d/u.test(written)) this.fault('text-not-readable', beginsText(written), span);
      return null;
    }
    this.scalarSpans.push(span);
    return { kind: 'scalar', text, style, span };
  }

  private refuseProperties(node: Node & { readonly anchor?: unknown }): void {
    const start = node.range?.[0] ?? 0;
    if (typeof node.anchor === 'string') {
      this.fault(
        'anchor-refused',
        `“&${node.anchor}” names a value so that it can be copied by reference, which cannot be audited. Delete the “&${node.anchor}”.`,
        this.before(start, `&${node.anchor}`),
      );
    }
    if (typeof node.tag === 'string') {
      const lineStart = this.source.lastIndexOf('\n', start - 1) + 1;
      const tag = /(![^\s]*)\s*(?:&\S+\s*)?$/u.exec(this.source.slice(lineStart, start))?.[1];
      if (tag !== undefined)
        this.fault(
          'tag-refused',
          `“${tag}” forces a type on the value. The field itself says how it is read: delete the “${tag}”.`,
          this.before(start, tag),
        );
    }
  }

  private before(start: number, what: string): Span {
    const at = this.source.lastIndexOf(what, start);
    return at < 0 ? widen(this.source, { start, end: start }) : { start: at, end: at + what.length };
  }

  private span(node: Node): Span {
    return widen(this.source, { start: node.range?.[0] ?? 0, end: node.range?.[1] ?? 0 });
  }

  /** A block ends with its last part, not with the blank lines and comments behind it; brackets end with their bracket. */
  private upTo(node: Node & { readonly flow?: unknown }, end: number | undefined): Span {
    const span = this.span(node);
    return node.flow === true || end === undefined ? span : widen(this.source, { start: span.start, end });
  }

  private fault(check: string, message: string, span: Span): void {
    this.faults.push({ check, message, span });
  }

  errorFault(error: YAMLError): TreeFault {
    return {
      check: 'text-not-readable',
      message: explain(error),
      span: widen(this.source, { start: error.pos[0], end: error.pos[1] }),
    };
  }
}

const styles: Readonly<Record<string, ScalarNode['style']>> = {
  PLAIN: 'plain',
  QUOTE_SINGLE: 'single',
  QUOTE_DOUBLE: 'double',
  BLOCK_LITERAL: 'literal',
  BLOCK_FOLDED: 'folded',
};

/** What the parser's own code means for the person who writes. */
function explain(error: YAMLError): string {
  switch (error.code) {
    case 'TAB_AS_INDENT':
      return 'The line begins with a tab. Use blanks to indent, two for each level.';
    case 'BAD_INDENT':
      return error.message.startsWith('Flow')
        ? 'The list in brackets is not closed: expected “]” or “}”.'
        : 'The line is indented differently from the lines it belongs to. Fields of one section begin in the same column.';
    case 'BAD_SCALAR_START':
      return 'A value cannot begin with this character. Put the value in double quotes.';
    case 'MISSING_CHAR':
      return error.message.includes('map')
        ? 'Expected “: ” and a value behind this field.'
        : 'Something is missing here: a closing quote, bracket or “: ”.';
    case 'UNEXPECTED_TOKEN':
      return 'This does not belong here. If it is part of the text before it, put the whole text in double quotes.';
    case 'BAD_DQ_ESCAPE':
      return 'A backslash in double quotes begins a code that is not known. Use single quotes, or write the backslash twice.';
    case 'NON_STRING_KEY':
    case 'KEY_OVER_1024_CHARS':
      return 'A field name is one or more plain words.';
    default:
      return 'This cannot be read. Expected lines of the form “field: value”.';
  }
}

function severalDocuments(text: string, second: Document | undefined): TreeFault {
  const before = second?.contents == null ? text.length : (second.contents.range?.[0] ?? text.length);
  const at = Math.max(text.lastIndexOf('---', before), 0);
  return {
    check: 'several-documents',
    message:
      'A second document begins here (“---”). A file holds one note: move the rest to a file of its own; it was not read.',
    span: widen(text, { start: at, end: Math.min(at + 3, text.length) }),
  };
}

/** The first syntax fault of a line stands for the others, which follow from it. */
function onePerLine(text: string, faults: readonly TreeFault[]): TreeFault[] {
  const lines = new Set<number>();
  return faults.filter((fault) => {
    if (fault.check !== 'text-not-readable') return true;
    const line = text.lastIndexOf('\n', fault.span.start - 1);
    if (lines.has(line)) return false;
    lines.add(line);
    return true;
  });
}
