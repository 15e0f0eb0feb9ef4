package trestle.massbalance;

/**
 * One item moved along the fuselage.
 *
 * @param itemIndex its position in the list, from 0
 * @param item its name
 * @param toArmM where to, m aft of the datum
 * @param byM how far, m, aft positive
 * @param reachable whether its travel allows it
 */
public record Move(int itemIndex, String item, double toArmM, double byM, boolean reachable) {}
