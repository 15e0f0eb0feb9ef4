package trestle.endpoint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import trestle.api.model.ApiAssumption;
import trestle.api.model.ApiCheck;
import trestle.api.model.ApiComputedBy;
import trestle.api.model.ApiFinding;
import trestle.api.model.ApiJudgement;
import trestle.api.model.ApiOutcome;
import trestle.api.model.ApiSeverity;
import trestle.api.model.ApiVerdict;
import trestle.finding.Check;
import trestle.finding.Finding;
import trestle.finding.Judgement;
import trestle.finding.Subject;

/** Writes what a discipline thinks of its numbers into the part that every answer carries. */
public final class JudgementWriting {
    /** The place in a list, within a pointer. */
    private static final Pattern INDEX = Pattern.compile("/[0-9]+");

    /** The greatest number of the contract. */
    private static final double GREATEST = 1e15;

    private JudgementWriting() {}

    /**
     * The judgement on one calculation.
     *
     * @param judgement of the discipline
     * @param place where the discipline's parts stand in the request
     * @param premises what the answer rests on beside the numbers given
     * @param cautions safety sentences
     * @param models the models behind the numbers
     * @return verdict, checks, findings worst first, assumptions, cautions and origin
     */
    public static ApiJudgement of(
            Judgement judgement,
            Function<Subject, String> place,
            Premises premises,
            List<String> cautions,
            List<String> models) {
        List<ApiAssumption> assumptions = new ArrayList<>(premises.assumptions());
        judgement
                .assumptions()
                .forEach(c -> assumptions.add(new ApiAssumption(place.apply(c.subject()), c.assumed(), c.because())));
        List<ApiFinding> findings = new ArrayList<>();
        judgement.findings().forEach(finding -> findings.add(write(finding, place)));
        NotJudged.of(judgement.checks(), place).ifPresent(findings::add);
        StopWithinBand.of(premises.risks()).ifPresent(findings::add);
        return of(
                judgement.checks().stream().map(c -> write(c, place)).toList(),
                findings,
                new Premises(assumptions, premises.estimates(), premises.bands(), premises.risks()),
                cautions,
                models);
    }

    /**
     * The judgement that follows from findings that are already written.
     *
     * @param checks in their order
     * @param findings in any order
     * @param premises what the answer rests on beside the numbers given
     * @param cautions safety sentences
     * @param models the models behind the numbers
     * @return the judgement
     */
    public static ApiJudgement of(
            List<ApiCheck> checks,
            List<ApiFinding> findings,
            Premises premises,
            List<String> cautions,
            List<String> models) {
        List<ApiFinding> worstFirst = findings.stream()
                .sorted(Comparator.comparing(ApiFinding::severity))
                .toList();
        return ApiJudgement.builder()
                .verdict(verdict(worstFirst))
                .checks(checks)
                .findings(worstFirst)
                .assumptions(premises.assumptions())
                .estimates(premises.estimates().isEmpty() ? null : premises.estimates())
                .bands(premises.bands())
                .risks(premises.risks().isEmpty() ? null : premises.risks())
                .cautions(cautions)
                .computedBy(new ApiComputedBy(Version.current(), models))
                .build();
    }

    /**
     * What several calculations think together.
     *
     * @param parts their judgements, in their order
     * @return one judgement; a caution or a model that several have stands once
     */
    public static ApiJudgement merged(List<ApiJudgement> parts) {
        return of(
                parts.stream().flatMap(part -> part.checks().stream()).toList(),
                once(parts.stream().flatMap(part -> part.findings().stream()).toList()),
                premises(parts),
                parts.stream()
                        .flatMap(part -> part.cautions().stream())
                        .distinct()
                        .toList(),
                parts.stream()
                        .flatMap(part -> part.computedBy().models().stream())
                        .distinct()
                        .toList());
    }

    /** What is estimated for the whole stands with its first part. */
    private static Premises premises(List<ApiJudgement> parts) {
        ApiJudgement whole = parts.get(0);
        return new Premises(
                parts.stream().flatMap(part -> part.assumptions().stream()).toList(),
                Reading.listed(whole.estimates()),
                whole.bands(),
                Reading.listed(whole.risks()));
    }

    /** What two parts say of one field stands once, and so does what several runs of wire lack alike. */
    private static List<ApiFinding> once(List<ApiFinding> findings) {
        Set<Object> said = new HashSet<>();
        return findings.stream()
                .filter(finding -> said.add(
                        NotJudged.CODE.equals(finding.code())
                                ? INDEX.matcher(finding.message()).replaceAll("/*")
                                : finding))
                .toList();
    }

    private static ApiVerdict verdict(List<ApiFinding> worstFirst) {
        if (worstFirst.isEmpty()) {
            return ApiVerdict.FIT;
        }
        return switch (worstFirst.get(0).severity()) {
            case STOP -> ApiVerdict.STOP;
            case ATTENTION -> ApiVerdict.ATTENTION;
            case NOTE -> ApiVerdict.FIT;
        };
    }

    private static ApiFinding write(Finding finding, Function<Subject, String> place) {
        return ApiFinding.builder()
                .severity(ApiSeverity.valueOf(finding.severity().name()))
                .code(finding.code())
                .message(finding.message())
                .at(place.apply(finding.subject()))
                .value(told(finding.value()))
                .limit(told(finding.limit()))
                .build();
    }

    /** A number as the contract lets it be told; one beyond that says nothing to a builder. */
    private static Double told(OptionalDouble number) {
        return number.isPresent() && Math.abs(number.getAsDouble()) <= GREATEST ? (Double) number.getAsDouble() : null;
    }

    private static ApiCheck write(Check check, Function<Subject, String> place) {
        return ApiCheck.builder()
                .code(check.code())
                .about(check.about())
                .outcome(ApiOutcome.valueOf(check.outcome().name()))
                .value(told(check.value()))
                .limit(told(check.limit()))
                .unit(check.unit().isEmpty() ? null : check.unit())
                .marginPercent(told(check.marginPercent()))
                .basis(check.basis().said())
                .at(place.apply(check.subject()))
                .give(
                        check.give().isEmpty()
                                ? null
                                : check.give().stream().map(place).toList())
                .build();
    }
}
