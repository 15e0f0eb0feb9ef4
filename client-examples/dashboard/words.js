// Field names, units and numbers as people read them.

/** The longest suffix wins: a speed ends in _m_per_s, not in _s. */
const UNITS = new Map([
  ['kg_per_m3', 'kg/m³'],
  ['g_per_dm2', 'g/dm²'],
  ['rpm_per_v', 'rpm/V'],
  ['wh_per_km', 'Wh/km'],
  ['wh_per_kg', 'Wh/kg'],
  ['w_per_kg', 'W/kg'],
  ['k_per_w', 'K/W'],
  ['m_per_s', 'm/s'],
  ['kg_m2', 'kg·m²'],
  ['g_mm', 'g·mm'],
  ['n_m', 'N·m'],
  ['n_per_m', 'N/m'],
  ['percent_mac', '% MAC'],
  ['percent', '%'],
  ['milliohm', 'mΩ'],
  ['microhenry', 'µH'],
  ['hpa', 'hPa'],
  ['mm2', 'mm²'],
  ['dm2', 'dm²'],
  ['mm', 'mm'],
  ['km', 'km'],
  ['in', 'in'],
  ['rpm', 'rpm'],
  ['deg', '°'],
  ['min', 'min'],
  ['ah', 'Ah'],
  ['wh', 'Wh'],
  ['ut', 'µT'],
  ['uh', 'µH'],
  ['uf', 'µF'],
  ['kg', 'kg'],
  ['g', 'g'],
  ['m', 'm'],
  ['s', 's'],
  ['h', 'h'],
  ['a', 'A'],
  ['v', 'V'],
  ['w', 'W'],
  ['c', '°C'],
  ['n', 'N'],
  ['j', 'J'],
  ['k', 'K'],
]);

/** What the wording of this house calls otherwise than the field. */
const NAMES = new Map([
  ['total_mass_g', 'Take-off mass'],
  ['cg_arm_mm', 'CG, aft of the datum'],
  ['launch_margin_percent', 'Launch margin over the stall'],
]);

const SPELLINGS = new Map([
  ['takeoff', 'take-off'],
  ['max', 'maximum'],
  ['min', 'minimum'],
  ['cg', 'CG'],
  ['mac', 'MAC'],
  ['dc', 'DC'],
  ['ac', 'AC'],
]);

/** A field name without its unit, and the unit; no unit for a name that has none. */
export function split(name) {
  const parts = name.split('_');
  for (let take = Math.min(3, parts.length - 1); take > 0; take -= 1) {
    const unit = UNITS.get(parts.slice(-take).join('_'));
    if (unit !== undefined) {
      return { words: parts.slice(0, -take), unit };
    }
  }
  return { words: parts, unit: '' };
}

/** A field name as a label: "max_takeoff_mass_g" is "Maximum take-off mass". */
export function label(name) {
  if (NAMES.has(name)) {
    return NAMES.get(name);
  }
  const text = split(name).words.map((word) => SPELLINGS.get(word) ?? word).join(' ');
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** The unit that a field name ends in, as it is written; empty where there is none. */
export function unit(name) {
  return split(name).unit;
}

/** A word of the contract: "still_bay" is "still bay". */
export function plain(word) {
  return String(word).replaceAll('_', ' ');
}

/** Text of the contract, the names of fields in it as the form has them. */
export function prose(text) {
  return text.replace(/`([^`]+)`/g, (_, name) => `“${split(name).words.join(' ')}”`);
}

/** A number to so many digits, more where they stand before the dot. */
export function shown(number, digits = 3) {
  const size = Math.abs(number);
  if (size !== 0 && (size < 1e-3 || size >= 1e9)) {
    return number.toExponential(digits - 1).replaceAll('-', '−');
  }
  const text = size >= 10 ** (digits - 1) ? String(Math.round(number)) : String(Number(number.toPrecision(digits)));
  const [whole, fraction] = text.split('.');
  const grouped = whole.length > 4 + (number < 0 ? 1 : 0) ? whole.replace(/\B(?=(\d{3})+$)/g, '\u202f') : whole;
  return (fraction === undefined ? grouped : `${grouped}.${fraction}`).replace('-', '−');
}

/** A number with its unit; the sign of an angle stands close. */
export function measure(number, unitText, digits = 3) {
  const text = shown(number, digits);
  return unitText === '' ? text : `${text}${unitText === '°' ? '' : '\u00a0'}${unitText}`;
}

/** A long time as people say it: "3 h 12 min". */
export function spelled(seconds) {
  const minutes = Math.round(seconds / 60);
  return minutes < 60 ? `${minutes} min` : `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
}

/** What is wrong with a field, without the name that its label says. */
export function wrong({ at, message }) {
  const name = at.slice(at.lastIndexOf('/') + 1);
  const rest = name !== '' && message.startsWith(`${name} `) ? message.slice(name.length + 1) : message;
  return rest.charAt(0).toUpperCase() + rest.slice(1);
}

/** "1 note", "3 notes". */
export function count(number, singular, plural = `${singular}s`) {
  return `${number} ${number === 1 ? singular : plural}`;
}

const NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

/** A number where it is one; other text goes to the service as it is, which says what is wrong with it. */
export function numberOrText(text) {
  const trimmed = text.trim().replace('−', '-');
  const number = NUMBER.test(trimmed) ? Number(trimmed) : NaN;
  return Number.isFinite(number) ? number : textOrNothing(trimmed);
}

/** Nothing where there is no text. */
export function textOrNothing(text) {
  return text === '' ? undefined : text;
}
