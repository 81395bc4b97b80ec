/**
 * A picture for paper: the plain colours of its style sheet, without what depends on the reader's screen. The library
 * that draws it knows neither media rules nor variables.
 */
export function stillSvg(svg: string): string {
  return svg.replace(/(<style>)([^<]*)(<\/style>)/u, (_whole, open: string, rules: string, close: string) => {
    const still = rules
      .replaceAll(/@media[^{]*\{(?:[^{}]*\{[^{}]*\})*\}/gu, '')
      .replaceAll(/;(?:fill|stroke):var\([^)]*\)/gu, '');
    return open + still + close;
  });
}
