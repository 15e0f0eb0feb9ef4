/** What the service offers: every calculation and every reference table. A new one is one line. */
package trestle.catalogue;
