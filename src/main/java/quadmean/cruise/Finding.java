package quadmean.cruise;

import quadmean.model.Rule;

/**
 * Something unlikely about a tree, seen against the others.
 *
 * @param rule the rule it breaks
 * @param subject what is unlikely
 * @param detail what is wrong, as a sentence without a full stop
 */
record Finding(Rule rule, Subject subject, String detail) {

    /** What a finding is about. */
    enum Subject {
        HEIGHT,
        DBH
    }
}
