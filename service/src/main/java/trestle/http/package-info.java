/**
 * The front door: server, routes, binding, validation, problems, limits, the request log. Knows the
 * catalogue of calculations and no discipline.
 */
package trestle.http;
