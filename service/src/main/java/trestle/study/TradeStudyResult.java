package trestle.study;

import java.util.List;
import java.util.Map;
import trestle.finding.Judgement;

/**
 * What a plan gave.
 *
 * @param rows of its points, in order
 * @param failed at how many the calculation refused its request
 * @param judgement what is to be said of it
 */
record TradeStudyResult(List<Map<String, Object>> rows, int failed, Judgement judgement) {}
