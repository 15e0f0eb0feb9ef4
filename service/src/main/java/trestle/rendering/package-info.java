/**
 * The ways in which an answer is written: JSON, text, a table, a picked value or row, a picture, a
 * sheet. Each says what media type it writes; which of them a caller gets is chosen elsewhere.
 */
package trestle.rendering;
