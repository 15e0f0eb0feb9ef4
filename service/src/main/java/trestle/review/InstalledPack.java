package trestle.review;

import trestle.battery.Segment;
import trestle.massbalance.Item;

/**
 * A pack in its bay.
 *
 * @param item its mass and place
 * @param segment its cells
 */
public record InstalledPack(Item item, Segment segment) {}
