package trestle.endpoint.massbalance;

import java.util.List;
import java.util.stream.IntStream;
import trestle.api.model.ApiBalanceItem;
import trestle.api.model.ApiMassBalanceRequest;
import trestle.endpoint.Estimating;
import trestle.estimate.Estimate;
import trestle.estimate.Spread;

/** Completes a request for a balance: how far the fuselage moves the neutral point, and what the scales leave open. */
public final class BalanceCompletion {
    /** With more tolerances than this each hardly matters, and the answer has their sum by squares. */
    private static final int MOST_TOLERANCES = 60;

    private BalanceCompletion() {}

    static ApiMassBalanceRequest complete(ApiMassBalanceRequest request, Estimating estimating) {
        boolean judged = request.tail() != null || Boolean.TRUE.equals(request.tailless());
        Double shift = request.fuselageShiftPercentMac();
        return request.toBuilder()
                .items(items(request.items(), ApiMassBalanceRequest.ITEMS.at(""), estimating))
                .fuselageShiftPercentMac(
                        judged && request.fuselage() == null
                                ? estimating.usual(
                                        shift,
                                        ApiMassBalanceRequest.FUSELAGE_SHIFT_PERCENT_MAC,
                                        "",
                                        BalanceCompletion::fuselageShift)
                                : shift)
                .build();
    }

    /** How far a fuselage of unknown shape moves the neutral point. */
    public static Estimate fuselageShift() {
        return Estimate.of(
                Spread.normal(-2, 1.2), "a fuselage of unknown shape ahead of the tail", Estimate.USUAL_PRACTICE);
    }

    /**
     * The items within their tolerances.
     *
     * @param items of the request
     * @param at JSON Pointer of the list
     * @param estimating draws them
     * @return the items
     */
    public static List<ApiBalanceItem> items(List<ApiBalanceItem> items, String at, Estimating estimating) {
        long open = items.stream()
                .filter(item -> item.massToleranceG() != null || item.armToleranceMm() != null)
                .count();
        return open == 0 || open > MOST_TOLERANCES
                ? items
                : IntStream.range(0, items.size())
                        .mapToObj(i -> item(items.get(i), at + "/" + i, estimating))
                        .toList();
    }

    private static ApiBalanceItem item(ApiBalanceItem item, String at, Estimating estimating) {
        if (item.massToleranceG() == null && item.armToleranceMm() == null) {
            return item;
        }
        Double massG = estimating.within(item.massG(), item.massToleranceG(), ApiBalanceItem.MASS_G.at(at));
        return item.toBuilder()
                .massG(massG)
                .armMm(estimating.within(item.armMm(), item.armToleranceMm(), ApiBalanceItem.ARM_MM.at(at)))
                .build();
    }
}
