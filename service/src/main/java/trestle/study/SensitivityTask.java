package trestle.study;

import java.util.List;
import trestle.binding.FieldPath;

/**
 * What is asked of how figures go with numbers.
 *
 * @param studied the calculation with its base
 * @param numbers the numbers that are moved
 */
record SensitivityTask(Studied<?, ?, ?> studied, List<FieldPath> numbers) {}
