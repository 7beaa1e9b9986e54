package quadmean.report;

import quadmean.cruise.CruiseResult;
import quadmean.estimate.EstimateRow;

/** Codes of species and strata with their names, for people. */
final class Names {
    private Names() {}

    static String species(CruiseResult result, String code) {
        String name = result.design().speciesName(code);
        return code.equals(EstimateRow.ALL) ? "All species" : name.equals(code) ? code : code + ", " + name;
    }

    static String stratum(CruiseResult result, String code) {
        return code.equals(EstimateRow.ALL)
                ? "All strata"
                : result.design().stratumList().stream()
                        .filter(s -> s.code().equals(code))
                        .map(s -> s.name().equals(code) ? code : code + ", " + s.name())
                        .findFirst()
                        .orElse(code);
    }

    static String product(CruiseResult result, String code) {
        return code.equals(EstimateRow.ALL)
                ? "All products"
                : result.design().wood().logs().stream()
                        .flatMap(l -> l.products().stream())
                        .filter(p -> p.code().equals(code))
                        .map(p -> p.name().equals(code) ? code : code + ", " + p.name())
                        .findFirst()
                        .orElse(code);
    }
}
