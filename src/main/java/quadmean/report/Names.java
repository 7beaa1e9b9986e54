package quadmean.report;

import quadmean.design.Design;
import quadmean.estimate.EstimateRow;

/** Codes of species and strata with their names, for people. */
final class Names {
    private Names() {}

    static String species(Design design, String code) {
        String name = design.speciesName(code);
        return code.equals(EstimateRow.ALL) ? "All species" : name.equals(code) ? code : code + ", " + name;
    }

    static String stratum(Design design, String code) {
        return code.equals(EstimateRow.ALL)
                ? "All strata"
                : design.stratumList().stream()
                        .filter(s -> s.code().equals(code))
                        .map(s -> s.name().equals(code) ? code : code + ", " + s.name())
                        .findFirst()
                        .orElse(code.isEmpty() ? "No stratum" : code);
    }

    static String product(Design design, String code) {
        return code.equals(EstimateRow.ALL)
                ? "All products"
                : design.wood().logs().stream()
                        .flatMap(l -> l.products().stream())
                        .filter(p -> p.code().equals(code))
                        .map(p -> p.name().equals(code) ? code : code + ", " + p.name())
                        .findFirst()
                        .orElse(code);
    }
}
