// Documents of version 0.1: their fields have other names now.

/** Old names and new. A field is renamed where the contract knows the new name and not the old one. */
const NOW = new Map([
  ['mission', 'flight'],
  ['insulation', 'covering'],
  ['strands_in_parallel', 'parallel_wires'],
  ['battery_mass_g', 'pack_mass_g'],
  ['k1', 'induced_power_coefficient'],
  ['k3', 'parasite_power_coefficient'],
]);

/**
 * A document with the names of today.
 * @param {object} document as it was opened
 * @param {object} contract resolves schemas
 * @param {object} schema of the document
 * @returns {{document: object, renames: Map<string, string>}} and which of its names were old
 */
export function renamed(document, contract, schema) {
  const renames = new Map();
  return { document: inside(document, schema), renames };

  function inside(value, unresolved) {
    const here = contract.resolved(unresolved);
    if (here === undefined || value === null || typeof value !== 'object') {
      return value;
    }
    if (Array.isArray(value)) {
      return value.map((entry) => inside(entry, here.items));
    }
    const known = here.properties ?? {};
    return Object.fromEntries(
      Object.entries(value).map(([name, part]) => {
        const now = NOW.get(name);
        const isOld = !Object.hasOwn(known, name) && now !== undefined && Object.hasOwn(known, now) && !Object.hasOwn(value, now);
        if (isOld) {
          renames.set(name, now);
        }
        return [isOld ? now : name, inside(part, known[isOld ? now : name])];
      }),
    );
  }
}
