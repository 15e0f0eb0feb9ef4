/**
 * What the air, the launch and the landing ask of wing, joints, straps and servos. {@link AirframeLoads} is the way in.
 *
 * <p>The model: the whole lift stands on the wing, spread by Schrenk's approximation [1] or as an ellipse, less the wing's own
 * mass; the spars that stand at a station share its bending by stiffness; joiners are rigid pins in linear sockets [2]; gusts
 * follow the formula of CS-VLA 341 [3] with a gust scaled to the chord; hinge moments are those of a thin section with a
 * plain flap [4]. Static, rigid, no flutter.
 *
 * <p>Sources: [1] O. Schrenk, NACA TM 948, 1940 (abstract and procedure read); [2] beam formulas as in T. Megson, Aircraft
 * Structures, and R. Roark, Formulas for Stress and Strain, both from memory; [3] CS-VLA 333, 337, 341, read as a transcript;
 * [4] H. Glauert, ARC R&amp;M 1095, 1927, in the form of E. Houghton and P. Carpenter, Aerodynamics for Engineering Students,
 * section 4.5. Strengths: see {@link Materials}. Knock-downs, the size law of gusts and the strap factors are engineering
 * assumptions that each answer lists.
 */
package trestle.structure;
