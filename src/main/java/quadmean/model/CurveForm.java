package quadmean.model;

/** The height-diameter curve forms by name; the room {@code height} holds their mathematics. */
public enum CurveForm {
    /** Näslund 1936, exponent 2. */
    NASLUND("naslund", "Näslund", "bh + d²/(a + b·d)²", "Näslund 1936", Basis.SEEN),
    /** Näslund's form with exponent 3. */
    NASLUND_CUBED("naslund3", "Näslund, exponent 3", "bh + d³/(a + b·d)³", "after Näslund 1936", Basis.SEEN),
    /** Michailoff 1943. */
    MICHAILOFF("michailoff", "Michailoff", "bh + a·exp(-b/d)", "Michailoff 1943; Schumacher 1939", Basis.SEEN),
    /** Curtis 1967, the ratio form. */
    CURTIS("curtis", "Curtis", "bh + a·(d/(1 + d))^b", "Curtis 1967", Basis.SEEN),
    /** Wykoff, Crookston and Stage 1982. */
    WYKOFF(
            "wykoff",
            "Wykoff",
            "bh + exp(a + b/(d + 1))",
            "Wykoff, Crookston & Stage 1982 (USDA Forest Service GTR INT-133)",
            Basis.SEEN),
    /** The power curve. */
    POWER("power", "Power", "bh + a·d^b", "Stoffels & van Soest 1953", Basis.SEEN),
    /** Meyer 1940. */
    MEYER("meyer", "Meyer", "bh + a·(1 - exp(-b·d))", "Meyer 1940", Basis.FROM_MEMORY),
    /** The hyperbola of Michaelis and Menten. */
    HYPERBOLIC("hyperbolic", "Hyperbolic", "bh + a·d/(b + d)", "Michaelis & Menten 1913", Basis.FROM_MEMORY),
    /** Chapman-Richards. */
    CHAPMAN_RICHARDS(
            "chapman_richards",
            "Chapman-Richards",
            "bh + a·(1 - exp(-b·d))^c",
            "Richards 1959; Chapman 1961",
            Basis.SEEN),
    /** The Weibull curve. */
    WEIBULL("weibull", "Weibull", "bh + a·(1 - exp(-b·d^c))", "Yang, Kozak & Smith 1978", Basis.FROM_MEMORY),
    /** Korf's curve, also Lundqvist's; Wang and Hann 1988 write the same with ln a. */
    KORF("korf", "Korf", "bh + a·exp(-b·d^-c)", "Korf 1939; Lundqvist 1957", Basis.FROM_MEMORY),
    /** Ratkowsky 1990. */
    RATKOWSKY("ratkowsky", "Ratkowsky", "bh + a·exp(-b/(d + c))", "Ratkowsky 1990", Basis.FROM_MEMORY),
    /** The logistic curve; it does not pass through breast height at dbh 0. */
    LOGISTIC("logistic", "Logistic", "bh + a/(1 + b·exp(-c·d))", "Pearl & Reed 1920", Basis.FROM_MEMORY),
    /** Gompertz's curve; it does not pass through breast height at dbh 0. */
    GOMPERTZ("gompertz", "Gompertz", "bh + a·exp(-b·exp(-c·d))", "Winsor 1932", Basis.FROM_MEMORY),
    /** Prodan's curve. */
    PRODAN("prodan", "Prodan", "bh + d²/(a + b·d + c·d²)", "Strand 1959; Prodan 1968", Basis.FROM_MEMORY),
    /** Hossfeld's fourth curve. */
    HOSSFELD("hossfeld", "Hossfeld IV", "bh + a/(1 + 1/(b·d^c))", "Hossfeld 1822", Basis.SEEN);

    /** How sure we are of a form's formula. */
    private enum Basis {
        /** Seen in a public source: the comparison in Forestry Studies 2024, doi 10.2478/fsmu-2024-0011. */
        SEEN(""),
        FROM_MEMORY(" (from memory)");

        private final String mark;

        Basis(String mark) {
            this.mark = mark;
        }
    }

    private final String id;
    private final String label;
    private final String formula;
    private final String source;

    CurveForm(String id, String label, String formula, String source, Basis basis) {
        this.id = id;
        this.label = label;
        this.formula = formula;
        this.source = source + basis.mark;
    }

    /** The name used in design files, JSON and CSV. */
    public String id() {
        return id;
    }

    /** The name used in sentences. */
    public String label() {
        return label;
    }

    /** The formula with d for dbh and bh for breast height. */
    public String formula() {
        return formula;
    }

    /** Where the form was published; marked where its formula is from memory. */
    public String source() {
        return source;
    }
}
