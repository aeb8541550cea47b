package clutchwright.engine.notation;

import clutchwright.engine.catalogue.Meaning;
import clutchwright.engine.notation.Mention.Asked;
import clutchwright.engine.notation.Mention.Link;
import clutchwright.engine.notation.Reading.Fault.FaultKind;
import clutchwright.engine.notation.Said.Span;
import clutchwright.engine.notation.StatusWords.Run;
import clutchwright.engine.probability.Fraction;
import java.util.List;
import java.util.Optional;

/// The words said so far that wait for a name, or go on to govern names.
final class Governing {

    private final Said said;
    private Optional<HetStatus> status = Optional.empty();
    private boolean fresh;
    private Asked asked = Asked.PLAIN;
    private boolean doubt;
    private Link link = Link.NONE;
    private Optional<Span> waiting = Optional.empty();

    Governing(Said said) {
        this.said = said;
    }

    void ask(Token token, Asked how) {
        // A number before it (66% super) speaks of doubt about what shows, not of a het.
        if (!isNumberBefore()) {
            status = Optional.empty();
        }
        asked = how;
        waiting = Optional.of(new Span(token.start(), token.end()));
    }

    void doubt(int start, int end) {
        doubt = true;
        waiting = Optional.of(new Span(start, end));
    }

    void or() {
        link = said.mentions.isEmpty() ? Link.NONE : Link.OR;
    }

    void endHets() {
        status = Optional.empty();
    }

    /// A name such as Het Red Axanthic begins: its first word is no status.
    void nameWithHet() {
        if (!isNumberBefore()) {
            status = Optional.empty();
        }
    }

    void begin(Run run, int start, int end) {
        var begun = run.status(start, end);
        if (!run.het() && status.isPresent()) {
            begun.worded = status.get().worded;
        }
        said.statuses.add(begun);
        status = Optional.of(begun);
        fresh = true;
        asked = Asked.PLAIN;
        doubt = false;
        link = Link.NONE;
    }

    /// @param tied whether only a slash stands between it and the name before
    Mention mention(Meaning meaning, int start, int end, boolean tied) {
        var joint = link == Link.OR ? Link.OR : tied ? Link.TIED : Link.NONE;
        boolean inherits = joint != Link.NONE && !doubt;
        boolean doubtful = doubt || (inherits && said.mentions.getLast().doubtful());
        var chance = inherits ? said.mentions.getLast().chance() : Optional.<Fraction>empty();
        boolean direct = fresh || (inherits && said.mentions.getLast().direct());
        boolean visual = inherits && said.mentions.getLast().asked() == Asked.VISUAL;
        var word = visual && asked == Asked.PLAIN ? Asked.VISUAL : asked;
        var het = inherits ? said.mentions.getLast().het() : status;
        het.ifPresent(governor -> governor.governs = true);
        return new Mention(start, end, meaning, word, het, direct, doubtful, chance, joint);
    }

    /// Whether a name said again straight away means two copies: nothing else is said of it.
    boolean isSilent() {
        return asked == Asked.PLAIN && status.isEmpty() && !doubt && link == Link.NONE;
    }

    /// @param staysCarried whether the name is one that a number alone may say to be carried
    void nameIsSaid(boolean staysCarried) {
        boolean numberOnly = status.filter(one -> !one.worded).isPresent();
        if (numberOnly && !(staysCarried && asked == Asked.PLAIN)) {
            status = Optional.empty();
        }
        fresh = false;
        asked = Asked.PLAIN;
        doubt = false;
        link = Link.NONE;
        waiting = Optional.empty();
    }

    /// Reports words that no name followed, unless it is the name that was not understood.
    void finish() {
        for (var one : said.statuses) {
            if (!one.governs) {
                nothingFollows(new Span(one.start, one.end));
            }
        }
        waiting.ifPresent(this::nothingFollows);
    }

    private void nothingFollows(Span span) {
        if (said.faults.stream().noneMatch(fault -> fault.start() >= span.end())) {
            said.fault(FaultKind.NOTHING_FOLLOWS, span.start(), span.end(), List.of());
        }
    }

    private boolean isNumberBefore() {
        return fresh && status.filter(one -> !one.worded).isPresent();
    }
}
