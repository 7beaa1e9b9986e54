package quadmean.volume;

import java.util.List;

/**
 * Volume of a part of a stem.
 *
 * @param sections its sections, the lowest first
 * @param fromM height of its lower end (m)
 * @param toM height of its upper end (m)
 * @param remarks what a reader should know, one sentence each
 */
public record StemVolume(List<Section> sections, double fromM, double toM, List<String> remarks) {
    public StemVolume {
        sections = List.copyOf(sections);
        remarks = List.copyOf(remarks);
    }

    /**
     * A section.
     *
     * @param fromM height of its lower end (m)
     * @param toM height of its upper end (m)
     * @param volumeM3 volume (m³)
     * @param method formula or solid that it was worked out by
     */
    public record Section(double fromM, double toM, double volumeM3, String method) {}

    /** Volume of all sections (m³). */
    public double volumeM3() {
        return sections.stream().mapToDouble(Section::volumeM3).sum();
    }
}
