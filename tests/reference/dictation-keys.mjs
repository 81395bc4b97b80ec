/**
 * Translates the JSON of `sideport dictate` into a neutral set of keys and values, so that dictations with
 * expected values can be scored without knowing the note format. Imports nothing.
 *
 * @typedef {{ path: (string|number)[], value: string|null, text: string, start: number, end: number,
 *   state: 'filled'|'proposed'|'unresolved', because: string, parts?: {value: string, start: number, end: number}[] }} Value
 * @typedef {{ version: 1, values: Value[], unmatched: {start: number, end: number, text: string}[],
 *   conflicts: {path: (string|number)[], because: string}[], withdrawn?: object[] }} Result
 */

const sites = new Set([
  'temporal',
  'superior',
  'superotemporal',
  'superonasal',
  'nasal',
  'inferotemporal',
  'inferior',
  'inferonasal',
]);

const words = {
  procedure: {
    'phacoemulsification with lens': 'phaco_iol',
    phacoemulsification: 'phaco',
    'manual small-incision extraction with lens': 'msics_iol',
    'extracapsular extraction with lens': 'ecce_iol',
    'lens exchange': 'iol_exchange',
    'secondary lens': 'secondary_iol',
    'lens repositioning': 'iol_repositioning',
    'peripheral iridotomy': 'peripheral_iridotomy',
  },
  grade: { consultant: 'consultant', 'senior trainee': 'trainee', 'junior trainee': 'trainee', fellow: 'fellow' },
  anaesthesia: {
    topical: 'topical',
    intracameral: 'intracameral',
    'sub-Tenon': 'sub_tenons',
    peribulbar: 'peribulbar',
    retrobulbar: 'retrobulbar',
    general: 'general',
    sedation: 'sedation',
  },
  cataract: {
    nuclear: 'nuclear',
    cortical: 'cortical',
    'posterior subcapsular': 'posterior_subcapsular',
    white: 'white',
    brunescent: 'brunescent',
    'posterior polar': 'posterior_polar',
  },
  plane: {
    'clear corneal': 'clear_corneal',
    'near-clear corneal': 'near_clear_corneal',
    limbal: 'limbal',
    'scleral tunnel': 'scleral_tunnel',
  },
  architecture: { 'one plane': 1, 'two planes': 2, 'three planes': 3 },
  ovd: {
    cohesive: 'cohesive',
    dispersive: 'dispersive',
    viscoadaptive: 'viscoadaptive',
    'hydroxypropyl methylcellulose': 'hpmc',
    'sodium hyaluronate': 'sodium_hyaluronate',
  },
  pupilAid: {
    none: 'none',
    'iris hooks': 'iris_hooks',
    'expansion ring': 'expansion_ring',
    stretch: 'stretch',
    'intracameral phenylephrine': 'intracameral_phenylephrine',
  },
  outcome: {
    complete: 'complete',
    incomplete: 'incomplete',
    'radial tear': 'radial_tear',
    'extended to the periphery': 'radial_tear',
    'converted to can-opener': 'can_opener',
  },
  technique: {
    'divide and conquer': 'divide_and_conquer',
    'stop and chop': 'stop_and_chop',
    'horizontal chop': 'horizontal_chop',
    'vertical chop': 'vertical_chop',
    'quick chop': 'quick_chop',
    flip: 'phaco_flip',
    prechop: 'prechop',
    'manual expression': 'manual_expression',
  },
  material: {
    'hydrophobic acrylic': 'hydrophobic_acrylic',
    'hydrophilic acrylic': 'hydrophilic_acrylic',
    silicone: 'silicone',
    PMMA: 'pmma',
  },
  lensKind: {
    monofocal: 'monofocal',
    toric: 'toric',
    multifocal: 'multifocal',
    'toric multifocal': 'toric',
    'extended depth of focus': 'extended_depth',
    'anterior chamber': 'anterior_chamber',
    'iris-claw': 'iris_claw',
  },
  placed: {
    'capsular bag': 'bag',
    sulcus: 'sulcus',
    'anterior chamber': 'anterior_chamber',
    'iris, behind': 'retropupillary',
    'scleral fixation': 'scleral_fixated',
  },
  complication: {
    'posterior capsule rupture': 'complication.pc_rupture',
    'vitreous loss': 'complication.vitreous_loss',
    'zonular dialysis': 'complication.zonular_dialysis',
    'iris prolapse': 'complication.iris_prolapse',
    'lens fragment into vitreous': 'complication.dropped_nucleus',
    'Descemet detachment': 'complication.descemet_detachment',
    'wound burn': 'complication.wound_burn',
    'suprachoroidal haemorrhage': 'complication.suprachoroidal_haemorrhage',
    'anterior capsule tear': 'complication.anterior_capsule_tear',
  },
};

const number = (text) => Number(/[+-]?\d+(?:\.\d+)?/u.exec(text)?.[0]);
const yes = (text) => text === 'yes';

/** Settings of the machine, wherever in the nucleus section they stand. */
const settings = {
  'bottle-height': 'phaco.bottle_height_cm',
  'set-pressure': 'phaco.target_iop_mmhg',
  vacuum: 'phaco.vacuum_mmhg',
  flow: 'phaco.flow_ml_min',
  power: 'phaco.power_percent',
};

/** The pieces of a value that was put together from several stretches, or the value itself. */
const pieces = (value) =>
  value.parts === undefined ? [{ value: value.value, start: value.start, end: value.end }] : value.parts;

function site(prefix, piece) {
  const at = piece.value;
  if (at.endsWith('°')) return [prefix === 'incision' ? 'incision.axis_deg' : 'sideport.axes_deg', number(at)];
  if (/o'clock/u.test(at)) return [prefix === 'incision' ? 'incision.clock_hour' : 'sideport.clock_hours', number(at)];
  return prefix === 'incision' && sites.has(at) ? ['incision.position', at] : undefined;
}

function days(text) {
  const unit = /day|week/u.exec(text)?.[0];
  return unit === undefined ? undefined : number(text) * (unit === 'week' ? 7 : 1);
}

/** [key, value] for one piece of one value, or undefined where the neutral keys have no such thing. */
function translate(value, piece, context) {
  const path = value.path.filter((step) => typeof step === 'string').join('.');
  const text = piece.value;
  const word = (key, table) => (table[text] === undefined ? undefined : [key, table[text]]);
  const entry = (field) => context.entry(value.path, field);
  switch (path) {
    case 'date':
      return ['operation.date', text];
    case 'procedure':
      return word('operation.procedure', words.procedure);
    case 'eye':
      return ['laterality', text];
    case 'free-text': {
      const minutes = /took (\d+(?:\.\d+)?) min/u.exec(text);
      if (minutes !== null) return ['operation.duration_min', Number(minutes[1])];
      if (/optic was not captured/iu.test(text)) return ['iol.optic_capture', false];
      return /no miotic/iu.test(text) ? ['drug.miotic', 'none'] : undefined;
    }
    case 'team.grade':
      return entry('role') === 'surgeon' ? word('surgeon.role', words.grade) : undefined;
    case 'anaesthesia.kinds':
      return word('anaesthesia.types', words.anaesthesia);
    case 'anaesthesia.volume':
      return ['anaesthesia.volume_ml', number(text)];
    case 'antisepsis.strength':
      return ['prep.povidone_iodine_percent', number(text)];
    case 'preop.pupil':
      return ['pupil.size_mm', number(text)];
    case 'pupil-aid':
    case 'pupil-aid.kind':
      return word('pupil.aid', words.pupilAid);
    case 'pupil-aid.count':
      return ['pupil.hooks_count', number(text)];
    case 'diagnosis.cataract':
      return word('cataract.types', words.cataract);
    case 'diagnosis.grade':
      return ['cataract.nuclear_grade', number(text)];
    case 'incisions.kind':
      return value.value === 'side-port' && value.parts !== undefined ? ['sideport.count', number(text)] : undefined;
    case 'incisions.width':
      return entry('kind') === 'side-port' ? undefined : ['incision.width_mm', number(text)];
    case 'incisions.plane':
      return word('incision.type', words.plane);
    case 'incisions.architecture':
      return word('incision.planes', words.architecture);
    case 'incisions.at':
      return site(entry('kind') === 'side-port' ? 'sideport' : 'incision', piece);
    case 'ovd.kind':
    case 'ovd.agent':
      return word('ovd.types', words.ovd);
    case 'dye':
      return text === 'trypan blue' || text === 'none' ? ['capsule.stain', text.replace(' ', '_')] : undefined;
    case 'cortex.polished-posterior':
      return ['capsule.polished', yes(text)];
    case 'capsulotomy.diameter':
      return ['capsulorhexis.diameter_mm', number(text)];
    case 'capsulotomy.off-centre': {
      const toward = /^toward (temporal|nasal|superior|inferior)$/u.exec(text);
      if (text === 'centred') return ['capsulorhexis.centration', 'centred'];
      return toward === null ? undefined : ['capsulorhexis.centration', `eccentric_${toward[1]}`];
    }
    case 'capsulotomy.outcome':
      return word('capsulorhexis.outcome', words.outcome);
    case 'capsulotomy.technique':
      return text === 'can-opener' ? ['capsulorhexis.outcome', 'can_opener'] : undefined;
    case 'hydrodissection.cortex':
      return ['hydro.dissection', yes(text)];
    case 'hydrodissection.delineation':
      return ['hydro.delineation', yes(text)];
    case 'nucleus.technique':
      return word('nucleus.technique', words.technique);
    case 'nucleus.ultrasound-time':
      return ['phaco.time_s', number(text)];
    case 'nucleus.dissipated-energy':
      return ['phaco.cde', number(text)];
    case 'cortex.method':
      return text === 'bimanual' || text === 'coaxial' ? ['ia.method', text] : undefined;
    case 'ring.used':
      return ['ctr.implanted', yes(text)];
    case 'ring.size':
      return ['ctr.size_mm', text.replace(/ mm$/u, '')];
    case 'ring.placed':
      return text === 'capsular bag' ? ['ctr.location', 'bag'] : ['ctr.location', text];
    case 'lens.power':
      return ['iol.power_d', number(text)];
    case 'plan.target':
      return ['iol.target_refraction_d', number(text)];
    case 'lens.pieces':
      return ['iol.pieces', number(text)];
    case 'lens.material':
      return word('iol.material', words.material);
    case 'lens.kind':
      return word('iol.kind', words.lensKind);
    case 'lens.placed':
      if (text === 'none') return ['iol.implanted', false];
      if (text === 'sulcus with optic capture') return ['iol.optic_capture', true];
      return word('iol.location', words.placed);
    case 'lens.axis':
      return ['iol.axis_deg', number(text)];
    case 'lens.cylinder':
      return ['iol.cylinder_d', number(text)];
    case 'lens.off-centre':
      return text === 'centred' ? ['iol.centred', true] : undefined;
    case 'lens.serial':
      return ['iol.serial', text];
    case 'complications':
      return text === 'none' ? ['complication.none', true] : undefined;
    case 'complications.what':
      if (text === 'lens decentred') return ['iol.centred', false];
      return words.complication[text] === undefined ? undefined : [words.complication[text], true];
    case 'complications-excluded':
      if (text === 'lens decentred') return ['iol.centred', true];
      return words.complication[text] === undefined ? undefined : [words.complication[text], false];
    case 'capsule-state.posterior':
      return text === 'intact' || text === 'torn' ? ['complication.pc_rupture', text === 'torn'] : undefined;
    case 'capsule-state.anterior':
      return text === 'intact'
        ? ['complication.anterior_capsule_tear', false]
        : ['complication.anterior_capsule_tear', true];
    case 'capsule-state.vitreous':
      return text === 'prolapsed' || text === 'not prolapsed'
        ? ['complication.vitreous_loss', text === 'prolapsed']
        : undefined;
    case 'capsule-state.zonule':
      return text === 'intact' || text === 'ruptured'
        ? ['complication.zonular_dialysis', text === 'ruptured']
        : undefined;
    case 'capsule-state.zonule-extent':
      return ['complication.zonular_clock_hours', number(text)];
    case 'vitrectomy':
      return ['vitrectomy.anterior', false];
    case 'vitrectomy.approach':
      return text === 'anterior' ? ['vitrectomy.anterior', true] : undefined;
    case 'vitrectomy.stain':
      return ['drug.triamcinolone', text === 'triamcinolone'];
    case 'drugs.drug':
      if (text === 'triamcinolone') return ['drug.triamcinolone', true];
      if (entry('purpose') === 'miotic') return ['drug.miotic', text];
      if (entry('route') === 'subconjunctival') return ['drug.subconjunctival', text];
      return ['cefuroxime', 'moxifloxacin', 'vancomycin'].includes(text)
        ? ['drug.intracameral_antibiotic', text]
        : undefined;
    case 'drugs.dose':
      if (entry('route') !== 'intracameral' || entry('purpose') !== 'antibiotic') return undefined;
      return [
        text.endsWith('mg') ? 'drug.intracameral_antibiotic_mg' : 'drug.intracameral_antibiotic_ml',
        number(text),
      ];
    case 'closure.hydration':
      return ['wound.hydrated', yes(text)];
    case 'closure.leak-test':
      return ['wound.leak', text === 'leak'];
    case 'closure.sutures':
      return ['wound.sutures', 0];
    case 'closure.sutures.count':
      return ['wound.sutures', number(text)];
    case 'closure.sutures.gauge':
      return ['wound.suture_gauge', text];
    case 'closure.sutures.material':
      if (text === 'nylon') return ['wound.suture_material', 'nylon'];
      if (text !== 'polyglactin') return undefined;
      return ['wound.suture_material', /pol+y ?glactin/iu.test(value.text) ? 'polyglactin' : 'vicryl_like_absorbable'];
    case 'after-care.shield':
      return ['dressing.shield', yes(text)];
    case 'after-care.pad':
      return ['dressing.pad', yes(text)];
    case 'after-care.drops.drug':
      if (entry('kind') === 'steroid') return ['postop.steroid', text];
      return entry('kind') === 'antibiotic' ? ['postop.antibiotic', text] : undefined;
    case 'after-care.drops.regimen': {
      const kind = entry('kind');
      if (kind !== 'steroid' && kind !== 'antibiotic') return undefined;
      if (text.startsWith('for ')) {
        const length = days(text);
        return length === undefined || length % 7 !== 0 ? undefined : ['postop.drops_weeks', length / 7];
      }
      return [`postop.${kind}_times_daily`, number(text)];
    }
    case 'after-care.instructions': {
      const length = days(/\bfor (\d+ (?:day|week)s?)$/u.exec(text)?.[1] ?? '');
      return length === undefined || length % 7 !== 0 ? undefined : ['postop.drops_weeks', length / 7];
    }
    case 'reviews.due': {
      const length = days(text);
      return length === undefined ? undefined : ['postop.review_days', length];
    }
    default: {
      const setting = /^(?:nucleus\.steps|cortex)\.([a-z-]+)$/u.exec(path)?.[1];
      return setting === undefined || settings[setting] === undefined ? undefined : [settings[setting], number(text)];
    }
  }
}

const lists = new Set([
  'anaesthesia.types',
  'cataract.types',
  'sideport.clock_hours',
  'sideport.axes_deg',
  'ovd.types',
  'drug.subconjunctival',
]);

/** Of several steps, the one whose settings stand for the operation: the later in this list. */
const stepOrder = ['cortex', 'sculpt', 'epinucleus', 'chop', 'whole nucleus', undefined, 'quadrant removal'];

/** Keys of which only the value spoken first counts. */
const firstOnly = new Set(['postop.drops_weeks', 'postop.review_days']);

function contextOf(values) {
  const base = (path) => JSON.stringify(path.slice(0, path.findLastIndex((step) => typeof step === 'number') + 1));
  const fields = new Map();
  for (const { path, value } of values) {
    const key = path.at(-1);
    if (typeof key === 'string') fields.set(`${base(path)} ${key}`, value);
  }
  return { entry: (path, field) => fields.get(`${base(path)} ${field}`) };
}

const overlaps = (a, b) => a.start < b.end && b.start < a.end;

/**
 * @param {Result} result
 * @returns {{ fields: {key: string, value: unknown, start: number, end: number, state: string}[],
 *   flags: {key: string, reason: string}[], unmatched: {start: number, end: number}[] }}
 */
export function toNeutral(result) {
  const context = contextOf(result.values);
  const fields = [];
  const flags = [];
  const keyed = [];
  const keyless = [];
  for (const value of result.values) {
    const guess = value.value ?? '';
    for (const piece of pieces({ ...value, value: guess })) {
      const found = translate({ ...value, value: guess }, piece, context);
      if (found === undefined) {
        if (value.state !== 'unresolved') keyless.push(strengthIn(value) ?? { start: piece.start, end: piece.end });
        continue;
      }
      const [key, translated] = found;
      keyed.push({ start: piece.start, end: piece.end });
      if (value.state === 'unresolved') flags.push({ key, reason: value.because });
      else
        fields.push({
          key,
          value: translated,
          start: piece.start,
          end: piece.end,
          state: value.state,
          rank: rankOf(value, context),
        });
    }
  }
  for (const { path, because } of result.conflicts) {
    for (const key of keysOfConflict(path, context)) flags.push({ key, reason: because });
  }
  const merged = merge(fields);
  const aids = merged.fields.filter(({ key }) => key === 'pupil.aid');
  if (aids.length > 1)
    merged.fields = merged.fields.filter(
      ({ key, value }) => key !== 'pupil.aid' || value !== 'intracameral_phenylephrine',
    );
  const stray = keyless.filter((span) => span.alone || !keyed.some((other) => overlaps(span, other)));
  const dropped = merged.dropped.map(({ start, end }) => ({ start, end }));
  return {
    fields: merged.fields,
    flags: unique(flags),
    unmatched: [
      ...result.unmatched.map(({ start, end }) => ({ start, end })),
      ...stray.map(({ start, end }) => ({ start, end })),
      ...dropped,
    ].toSorted((a, b) => a.start - b.start),
  };
}

function rankOf({ path }, context) {
  if (path[0] === 'cortex') return stepOrder.indexOf('cortex');
  return path[0] === 'nucleus' && path[1] === 'steps' ? stepOrder.indexOf(context.entry(path, 'step')) : 0;
}

/** The keys that a conflict at a path is about: translated with a value of each kind that the path can have. */
function keysOfConflict(path, context) {
  const trials = [
    'none',
    'yes',
    '1',
    '1 mm',
    '90°',
    "3 o'clock",
    'temporal',
    'phacoemulsification',
    'consultant',
    'topical',
    'capsular bag',
    'stop and chop',
    'complete',
    'centred',
    'intact',
    'torn',
    'prolapsed',
    'ruptured',
    'monofocal',
    'toric',
    'silicone',
    'clear corneal',
    'two planes',
    'bimanual',
    'anterior',
    'cefuroxime',
    'nylon',
    'no leak',
    '1 day',
    '1 times a day',
    'for 1 weeks',
    '1 mg',
    '1 mL',
    'acetylcholine',
    ...Object.keys(words.complication),
  ];
  const known = path.at(-1) === 'what' || path[0] === 'complications-excluded' ? [] : trials;
  return [...new Set(known.flatMap((value) => translate({ path, value, text: '' }, { value }, context)?.[0] ?? []))];
}

/** The number in “sodium hyaluronate 1.4 %”: the agent has a key, its strength has none. */
function strengthIn({ path, text, start }) {
  if (path.at(-1) !== 'strength' || path[0] !== 'ovd') return undefined;
  const found = /(?:[\d.]+|[a-z]+(?:[ -]point[ -][a-z]+)?)\s*(?:%|per ?cent)/iu.exec(text);
  return found === null
    ? undefined
    : { start: start + found.index, end: start + found.index + found[0].length, alone: true };
}

function unique(flags) {
  return flags.filter((flag, at) => flags.findIndex(({ key }) => key === flag.key) === at);
}

/** Lists gather their members in the order of speech; a key that is given twice is given once. */
function merge(fields) {
  const byKey = new Map();
  const dropped = [];
  const out = [];
  const ordered = fields.toSorted((a, b) => a.start - b.start);
  for (const field of ordered) {
    const known = byKey.get(field.key);
    if (lists.has(field.key)) {
      if (known === undefined) {
        const made = { ...field, value: [field.value] };
        byKey.set(field.key, made);
        out.push(made);
      } else if (!known.value.includes(field.value)) {
        known.value.push(field.value);
        known.start = Math.min(known.start, field.start);
        known.end = Math.max(known.end, field.end);
        if (field.state === 'proposed') known.state = 'proposed';
      }
    } else if (known === undefined) {
      byKey.set(field.key, field);
      out.push(field);
    } else if (known.rank !== field.rank) {
      const [kept, other] = known.rank > field.rank ? [known, field] : [field, known];
      out.splice(out.indexOf(known), 1, kept);
      byKey.set(field.key, kept);
      dropped.push(other);
    } else if (firstOnly.has(field.key) && known.value !== field.value) {
      dropped.push(field);
    } else if (known.value !== field.value) {
      out.push(field);
    }
  }
  return { fields: out.map(({ key, value, start, end, state }) => ({ key, value, start, end, state })), dropped };
}
