package quadmean.model;

/** How the error of a product is worked out: basal area by count times what measured trees hold for their basal area. */
public enum ProductRule {
    BRUCE(
            "bruce",
            "squared percent errors of count and ratio added up (Bruce 1961, from memory), as if the two were independent"),
    GOODMAN(
            "goodman",
            "the exact variance of a product (Goodman 1960, from memory), as if count and ratio were independent"),
    /** The whole error, with what count and ratio have in common. */
    DOUBLE_SAMPLING(
            "double_sampling",
            "double sampling by a ratio (Cochran 1977, chapter 12, from memory), with what count and ratio have in common");

    private final String id;
    private final String label;

    ProductRule(String id, String label) {
        this.id = id;
        this.label = label;
    }

    /** The name used in design files. */
    public String id() {
        return id;
    }

    /** The name used in sentences. */
    public String label() {
        return label;
    }
}
