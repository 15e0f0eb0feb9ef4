/**
 * From a JSON tree, or dotted names with values in text, to a generated request that fits the
 * contract: structure, then the model, then ranges, with every fault noted; and picks out of an
 * answer. Knows the contract and the catalogue, but no protocol: a refusal has a reason, and what
 * status that is elsewhere is not said here.
 */
package trestle.binding;
