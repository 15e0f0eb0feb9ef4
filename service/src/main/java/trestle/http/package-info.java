/**
 * The HTTP layer: server, routes, content negotiation, problems, limits, the request log. Knows the
 * catalogue of calculations and no discipline; what a request says and how it is answered is the
 * business of the rooms behind.
 */
package trestle.http;
