package quadmean.design;

import quadmean.units.UnitSystem;

/** The paper that field sheets are printed on. */
public enum Paper {
    /** 8.5 by 11 inches. */
    LETTER("letter"),
    /** 210 by 297 mm (ISO 216). */
    A4("a4");

    private final String id;

    Paper(String id) {
        this.id = id;
    }

    /** The name used in design files and in style sheets. */
    public String id() {
        return id;
    }

    /** The paper usual where a unit system is used. */
    public static Paper usual(UnitSystem units) {
        return units == UnitSystem.US ? LETTER : A4;
    }
}
