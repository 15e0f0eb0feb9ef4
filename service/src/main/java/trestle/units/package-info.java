/**
 * Named conversions between the trade's units and SI, one class a quantity. Each value is converted
 * once, where it crosses the edge of the service.
 */
package trestle.units;
