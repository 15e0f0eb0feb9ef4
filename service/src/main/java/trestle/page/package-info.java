/**
 * What is served beside the calculations: the contract with its index and examples, and the pages
 * for people.
 */
package trestle.page;
