/**
 * Many requests in one body, and rows out: JSON lines and CSV, read while they come in and sent
 * while they are made, within a deadline. Knows no protocol: where the bytes come from and go to,
 * and how a refusal is put in words, it is told.
 */
package trestle.batch;
