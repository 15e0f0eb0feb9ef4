/**
 * Where two disciplines meet: the pack as a supply, the drive as a source of thrust, the drag in level
 * flight. What a review and a single calculation both need of two disciplines stands here.
 */
package trestle.joint;
