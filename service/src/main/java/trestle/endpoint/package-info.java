/**
 * The calculations as callers see them, one class each: reads the generated request into our
 * records, asks the discipline, writes its result into the generated answer. These are the only
 * classes that know both sides; the catalogue lists them.
 */
package trestle.endpoint;
