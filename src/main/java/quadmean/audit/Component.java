package quadmean.audit;

/**
 * What the change between two dates is made of, per hectare (names after Beers 1962, from memory). On fixed plots V2 - V1 = survivor
 * growth + ingrowth - mortality - removals, plot by plot.
 */
public enum Component {
    START("start", "at the earlier date"),
    END("end", "at the later date"),
    /** V2 - V1. */
    CHANGE("change", "net change"),
    /** Trees that live at both dates, each with its weight of the earlier date. */
    SURVIVORS("survivor_growth", "growth of survivors"),
    /** New trees that have grown past the smallest dbh. */
    INGROWTH("ingrowth", "ingrowth"),
    /** New trees that were above it before, and come in because their limiting distance or ring has grown. */
    ONGROWTH("ongrowth", "ongrowth"),
    /** What survivors stand for less because they have grown; on average it takes off what ongrowth adds. */
    REWEIGHTING("lower_weight", "lower weight of grown trees"),
    /** Value at the earlier date of trees that died or count no more. */
    MORTALITY("mortality", "mortality"),
    /** Value at the earlier date of trees that were cut. */
    REMOVALS("removals", "removals"),
    /** Survivors and ingrowth. */
    GROSS("gross_growth", "gross growth with ingrowth"),
    /** Gross growth less mortality, from the trees of the earlier date. */
    NET("net_growth", "net growth, mortality off"),
    /** V2 - V1 + removals: the same on fixed plots, another estimate of it on points. */
    NET_BY_DATES("net_growth_by_dates", "net growth as the difference of the dates");

    private final String id;
    private final String label;

    Component(String id, String label) {
        this.id = id;
        this.label = label;
    }

    /** The name used in JSON and CSV. */
    public String id() {
        return id;
    }

    /** The name used on pages. */
    public String label() {
        return label;
    }

    /** Whether it is a change, which has a yearly rate. */
    public boolean isChange() {
        return this != START && this != END;
    }
}
