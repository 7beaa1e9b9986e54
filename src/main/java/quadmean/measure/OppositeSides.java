package quadmean.measure;

/**
 * A leaning tree sighted from opposite sides in the plane of its lean, each at a horizontal distance to its base. One
 * height reads high by x·tan α, the other low by x·tan α', with x the tip beside the plumb line over the base; two
 * equations give both the height and x. The plain mean of the two heights is what the trade takes; the error left in it
 * is the difference.
 *
 * @param one sighting from one side, tip above the eye; not three-shot, which lean does not move
 * @param other sighting from the opposite side, likewise
 */
public record OppositeSides(Sighting one, Sighting other) {
    /** @throws IllegalArgumentException if a sighting is three-shot or has its tip not above the eye */
    public OppositeSides {
        check(one);
        check(other);
    }

    /** Mean of the two heights (m). */
    public double meanHeight() {
        return (one.height() + other.height()) / 2;
    }

    /** The height freed of the lean (m). */
    public double height() {
        double tangent = one.readings().topTangent();
        double opposite = other.readings().topTangent();
        return (one.height() * opposite + other.height() * tangent) / (tangent + opposite);
    }

    /** How much the mean of the two heights is still too high (m): a small, mostly positive rest. */
    public double errorLeft() {
        return meanHeight() - height();
    }

    /** How far the tip stands beside the plumb line over the base (m), toward the first side. */
    public double tipOffset() {
        return (one.height() - other.height())
                / (one.readings().topTangent() + other.readings().topTangent());
    }

    private static void check(Sighting sighting) {
        if (sighting instanceof LaserSighting) {
            throw new IllegalArgumentException(
                    "a three-shot height is right whatever the lean; take several such heights as plain readings");
        }
        if (!(sighting.readings().topTangent() > 0)) {
            throw new IllegalArgumentException("from opposite sides, the tip must be above the eye on both");
        }
    }
}
