package clutchwright.engine.notation;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.catalogue.Meaning;
import clutchwright.engine.notation.Mention.Asked;
import clutchwright.engine.notation.Mention.Link;
import clutchwright.engine.notation.Reading.Fault.FaultKind;
import clutchwright.engine.notation.Reading.Part.PartKind;
import clutchwright.engine.notation.Said.PhaseWord;
import clutchwright.engine.notation.Said.Span;
import clutchwright.engine.notation.StatusWords.Run;
import clutchwright.engine.notation.Token.Kind;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// Reads a row of tokens into mentions of names and the status words that govern them.
///
/// `het` governs every following name until a new percentage, a new status word or the end.
final class Grammar {

    private final Catalogue catalogue;
    private final Names names;
    private final UnknownWords unknown;
    private final List<Token> tokens;
    private final Said said;

    private int at;
    private Optional<HetStatus> governing = Optional.empty();
    private boolean fresh;
    private Asked asked = Asked.PLAIN;
    private boolean doubt;
    private Link link = Link.NONE;
    private Optional<Span> waiting = Optional.empty();

    /// Where a parenthesis that was found to be no note ends in the text.
    private int noNoteBefore;

    /// Index of the token after the last name; above the number of tokens where there is none.
    private int afterName = Integer.MAX_VALUE;

    private Grammar(Catalogue catalogue, String text, int from, int to) {
        this.catalogue = catalogue;
        this.names = new Names(catalogue);
        this.tokens = new ArrayList<>(Tokens.of(text, from, to));
        this.said = new Said(text);
        this.unknown = new UnknownWords(catalogue, names, said);
    }

    static Said read(Catalogue catalogue, String text, int from, int to) {
        var grammar = new Grammar(catalogue, text, from, to);
        while (grammar.at < grammar.tokens.size()) {
            grammar.next();
        }
        grammar.finish();
        return grammar.said;
    }

    private void next() {
        var token = tokens.get(at);
        var match = names.longest(said.text, tokens, at);
        if (match.isPresent() && (match.get().severalWords() || !isStatusWord(token))) {
            name(match.get());
            return;
        }
        if (isMoreExact(at)) {
            return;
        }
        var run = StatusWords.at(names, said.text, tokens, at);
        if (run.isPresent()) {
            status(run.get());
            return;
        }
        switch (token.kind()) {
            case WORD -> word(token);
            case NUMBER, DOTTED -> number(token);
            case OPEN -> open();
            case MALE -> sex(token, Role.MALE);
            case FEMALE -> sex(token, Role.FEMALE);
            case DOUBT -> doubtSign(token);
            case QUOTED -> {
                said.remark(token.start(), token.end(), token.text());
                at++;
            }
            case TIMES, STRANGE -> {
                unknown.strange(token);
                at++;
            }
            case PERCENT -> {
                said.fault(FaultKind.BAD_CHANCE, token.start(), token.end(), List.of());
                at++;
            }
            case COMMA, SLASH, JOIN, PLUS, AND, CLOSE, ABOUT -> at++;
        }
    }

    private static boolean isStatusWord(Token token) {
        var role = token.role();
        return role != Role.NONE && role != Role.ORIGIN && role != Role.LINE;
    }

    private void name(Names.Match match) {
        var first = tokens.get(at);
        int end = tokens.get(match.next() - 1).end();
        if (match.meaning() instanceof Meaning.OfRemark(var name, var _)) {
            said.remark(first.start(), end, name);
            at = match.next();
            return;
        }
        if (first.role() == Role.HET && !isNumberBefore()) {
            // A name such as Het Red Axanthic: here the word is no status.
            governing = Optional.empty();
        }
        if (isTheSameAgain(match.meaning())) {
            said.mentions.add(said.mentions.removeLast().twice(end));
        } else {
            said.mentions.add(mention(match.meaning(), first.start(), end));
        }
        if (governing.filter(status -> !status.worded).isPresent()
                && !staysCarried(match.meaning())) {
            governing = Optional.empty();
        }
        fresh = false;
        asked = Asked.PLAIN;
        doubt = false;
        link = Link.NONE;
        waiting = Optional.empty();
        at = match.next();
        afterName = at;
    }

    /// A number without the word `het` goes on to govern names only after one that is carried.
    private boolean staysCarried(Meaning meaning) {
        return asked == Asked.PLAIN
                && meaning instanceof Meaning.OfAllele(var _, var allele)
                && !Choice.showsAlone(allele, catalogue.model().theLocus(allele.locus()));
    }

    private Mention mention(Meaning meaning, int start, int end) {
        var joint = link == Link.OR ? Link.OR : isTied() ? Link.TIED : Link.NONE;
        boolean inherits = joint != Link.NONE && !doubt;
        boolean doubtful = doubt || (inherits && said.mentions.getLast().doubtful());
        var chance = inherits ? said.mentions.getLast().chance() : Optional.<Fraction>empty();
        boolean direct = fresh || (inherits && said.mentions.getLast().direct());
        boolean visual = inherits && said.mentions.getLast().asked() == Asked.VISUAL;
        var word = visual && asked == Asked.PLAIN ? Asked.VISUAL : asked;
        var het = inherits ? said.mentions.getLast().het() : governing;
        het.ifPresent(status -> status.governs = true);
        return new Mention(start, end, meaning, word, het, direct, doubtful, chance, joint);
    }

    private boolean isTied() {
        return afterName == at - 1 && tokens.get(at - 1).is(Kind.SLASH);
    }

    /// `Pastel Pastel`, `Pastel/Pastel`.
    private boolean isTheSameAgain(Meaning meaning) {
        if (said.mentions.isEmpty() || !(meaning instanceof Meaning.OfAllele)) {
            return false;
        }
        var last = said.mentions.getLast();
        boolean follows = afterName == at || isTied() || isGlued();
        return follows
                && asked == Asked.PLAIN
                && last.asked() == Asked.PLAIN
                && governing.isEmpty()
                && last.het().isEmpty()
                && !doubt
                && link == Link.NONE
                && last.meaning().equals(meaning);
    }

    private boolean isGlued() {
        return afterName == at - 1 && tokens.get(at - 1).is(Kind.JOIN);
    }

    private boolean followsName(int index) {
        return !said.mentions.isEmpty()
                && (afterName == index
                        || (afterName == index - 1 && tokens.get(index - 1).is(Kind.OPEN)));
    }

    private void status(Run run) {
        var first = tokens.get(at);
        int end = tokens.get(run.next() - 1).end();
        if (splitsAhead(run.next())) {
            return;
        }
        int start = at;
        at = run.next();
        run.badChances()
                .forEach(
                        span ->
                                said.fault(
                                        FaultKind.BAD_CHANCE, span.start(), span.end(), List.of()));
        if (run.negative()) {
            negative(first);
            return;
        }
        said.statusWord(first.start(), end);
        if (run.contradicts()) {
            said.fault(FaultKind.CONTRADICTION, first.start(), end, List.of());
        }
        boolean inParentheses = start > 0 && tokens.get(start - 1).is(Kind.OPEN);
        boolean nothingAfter =
                at >= tokens.size()
                        || tokens.get(at).is(Kind.COMMA)
                        || tokens.get(at).is(Kind.CLOSE);
        if (nothingAfter && followsName(start) && (inParentheses || !run.het())) {
            backwards(run, first.start(), end);
        } else if (run.het() || run.hasNumber()) {
            forwards(run, first.start(), end);
        } else if (run.possible()) {
            doubt = true;
            waiting = Optional.of(new Span(first.start(), end));
        }
    }

    /// `66% hetPied`: the glued word may go on with the status.
    private boolean splitsAhead(int index) {
        if (index >= tokens.size()
                || !tokens.get(index).is(Kind.WORD)
                || tokens.get(index).role() != Role.NONE
                || names.longest(said.text, tokens, index).isPresent()) {
            return false;
        }
        var parts = names.split(tokens.get(index));
        if (!parts.isEmpty()) {
            tokens.remove(index);
            tokens.addAll(index, parts);
        }
        return !parts.isEmpty();
    }

    /// `Clown (66% het)`, `het Clown 66%`, `Enchi maybe`.
    private void backwards(Run run, int start, int end) {
        var last = said.mentions.removeLast();
        if (run.het() || run.hasNumber() || (run.proven() && last.het().isPresent())) {
            boolean hadNumber = last.het().isPresent() && last.het().get().hasNumber();
            if (hadNumber && run.hasNumber()) {
                said.fault(FaultKind.CONTRADICTION, start, end, List.of());
            }
            var status = run.status(start, end);
            last.het()
                    .ifPresent(
                            before -> {
                                status.worded |= before.worded;
                                status.possible |= before.possible;
                            });
            said.mentions.add(last.governedBy(status));
        } else {
            said.mentions.add(run.possible() ? last.doubted(Optional.empty()) : last);
        }
    }

    private void forwards(Run run, int start, int end) {
        var status = run.status(start, end);
        if (!run.het() && governing.isPresent()) {
            status.worded = governing.get().worded;
        }
        said.statuses.add(status);
        governing = Optional.of(status);
        fresh = true;
        asked = Asked.PLAIN;
        doubt = false;
        link = Link.NONE;
    }

    /// `neg Clown`: nothing that an animal shows or carries; the words are kept.
    private void negative(Token first) {
        int end = tokens.get(at - 1).end();
        boolean found = false;
        governing = Optional.empty();
        while (at < tokens.size() && tokens.get(at).role() == Role.FOR) {
            at++;
        }
        while (at < tokens.size()) {
            var match = names.longest(said.text, tokens, at);
            if (match.isEmpty()) {
                break;
            }
            found = true;
            at = match.get().next();
            end = tokens.get(at - 1).end();
            boolean goesOn =
                    at + 1 < tokens.size()
                            && (tokens.get(at).is(Kind.SLASH)
                                    || tokens.get(at).is(Kind.AND)
                                    || tokens.get(at).role() == Role.AND);
            if (!goesOn) {
                break;
            }
            at++;
        }
        if (found) {
            said.remark(first.start(), end, said.text.substring(first.start(), end));
        } else {
            said.fault(FaultKind.NOTHING_FOLLOWS, first.start(), end, List.of());
        }
    }

    private void word(Token token) {
        switch (token.role()) {
            case SUPER -> ask(token, Asked.SUPER);
            case HOMOZYGOUS -> ask(token, Asked.TWO_COPIES);
            case VISUAL -> ask(token, Asked.VISUAL);
            case MALE, FEMALE -> sexOrPhase(token);
            case UNSEXED -> {
                animals(token, new Genes.Group(0, 0, 1), false);
                at++;
            }
            case MALE_MAKER, FEMALE_MAKER -> {
                phase(token.start(), token.end(), token.role() == Role.MALE_MAKER);
                at++;
            }
            case NORMAL -> normal(token, token);
            case WILD -> wild(token);
            case OR -> {
                link = said.mentions.isEmpty() ? Link.NONE : Link.OR;
                at++;
            }
            case AND, FOR -> at++;
            case ORIGIN -> {
                said.remark(token.start(), token.end(), token.text());
                at++;
            }
            case LINE -> line(token);
            case NONE,
                    HET,
                    POSSIBLE_HET,
                    COUNTED_HET,
                    COUNT,
                    DOUBT,
                    PROVEN,
                    TESTED,
                    NEGATIVE,
                    TYPE,
                    MAKER,
                    TIMES ->
                    splitOrReport(token);
        }
    }

    private void splitOrReport(Token token) {
        var parts = names.split(token);
        if (parts.isEmpty()) {
            at = unknown.report(tokens, at, afterName);
        } else {
            tokens.remove(at);
            tokens.addAll(at, parts);
        }
    }

    private void ask(Token token, Asked how) {
        said.statusWord(token.start(), token.end());
        // A number before it (66% super) speaks of doubt about what shows, not of a het.
        if (!isNumberBefore()) {
            governing = Optional.empty();
        }
        asked = how;
        waiting = Optional.of(new Span(token.start(), token.end()));
        at++;
    }

    private boolean isNumberBefore() {
        return fresh && governing.filter(status -> !status.worded).isPresent();
    }

    private void wild(Token token) {
        int after = at + 1 < tokens.size() && tokens.get(at + 1).is(Kind.JOIN) ? at + 2 : at + 1;
        if (after < tokens.size() && tokens.get(after).role() == Role.TYPE) {
            at = after;
            normal(token, tokens.get(after));
        } else {
            splitOrReport(token);
        }
    }

    private void normal(Token first, Token last) {
        said.normals.add(new Span(first.start(), last.end()));
        said.part(PartKind.SHOWS, first.start(), last.end(), "Normal");
        at++;
    }

    private void sexOrPhase(Token token) {
        int after = at + 1 < tokens.size() && tokens.get(at + 1).is(Kind.JOIN) ? at + 2 : at + 1;
        if (after < tokens.size() && tokens.get(after).role() == Role.MAKER) {
            phase(token.start(), tokens.get(after).end(), token.role() == Role.MALE);
            at = after + 1;
        } else {
            sex(token, token.role());
        }
    }

    private void sex(Token token, Role sex) {
        boolean male = sex == Role.MALE;
        animals(token, new Genes.Group(male ? 1 : 0, male ? 0 : 1, 0), false);
        at++;
    }

    private void phase(int start, int end, boolean maleMaker) {
        said.phases.add(new PhaseWord(new Span(start, end), maleMaker));
        said.statusWord(start, end);
    }

    private void number(Token token) {
        if (token.is(Kind.DOTTED)) {
            GroupCounts.of(token.text())
                    .ifPresentOrElse(
                            group -> animals(token, group, true), () -> unknown.strange(token));
        } else if (token.text().matches("(19|20)\\d\\d")) {
            said.remark(token.start(), token.end(), token.text());
        } else {
            unknown.strange(token);
        }
        at++;
    }

    private void animals(Token token, Genes.Group group, boolean counted) {
        said.part(PartKind.ANIMALS, token.start(), token.end(), GroupCounts.write(group));
        var before = said.group;
        boolean agrees =
                before.isEmpty()
                        || ((counted && said.groupCounted)
                                ? before.get().equals(group)
                                : before.get().sexOfAll().equals(group.sexOfAll()));
        if (!agrees) {
            said.fault(
                    FaultKind.CONTRADICTION,
                    token.start(),
                    token.end(),
                    List.of(GroupCounts.write(before.orElse(group))));
        } else if (counted || before.isEmpty()) {
            said.group = Optional.of(group);
            said.groupCounted |= counted;
        }
    }

    private void doubtSign(Token token) {
        at++;
        said.statusWord(token.start(), token.end());
        if (followsName(at - 1) || isDoubtAlready(at - 1)) {
            var last = said.mentions.removeLast();
            said.mentions.add(last.doubted(last.chance()));
            afterName = at;
        } else {
            doubt = true;
            waiting = Optional.of(new Span(token.start(), token.end()));
        }
    }

    private boolean isDoubtAlready(int index) {
        return !said.mentions.isEmpty() && index > 0 && tokens.get(index - 1).is(Kind.DOUBT);
    }

    private void open() {
        if (tokens.get(at).start() < noNoteBefore) {
            at++;
            return;
        }
        int close = Parentheses.close(tokens, at);
        noNoteBefore = tokens.get(close - 1).end();
        if (Parentheses.isNote(tokens.subList(at + 1, close), names, said.text)) {
            var first = tokens.get(at + 1);
            var last = tokens.get(close - 1);
            int end = close < tokens.size() ? tokens.get(close).end() : last.end();
            said.remark(
                    tokens.get(at).start(), end, said.text.substring(first.start(), last.end()));
            said.notesInParentheses.add(new Span(first.start(), last.end()));
            at = Math.min(close + 1, tokens.size());
        } else {
            at++;
        }
    }

    /// `Axanthic (line tag 2)`, `Axanthic line 2`: the words after an open name settle it.
    private boolean isMoreExact(int index) {
        if (!followsName(index) || !leavesTheLineOpen(said.mentions.getLast().meaning())) {
            return false;
        }
        var last = said.mentions.getLast();
        var name = last.meaning().name();
        int from = tokens.get(index).is(Kind.OPEN) ? index + 1 : index;
        var words = new StringBuilder();
        for (int next = from; next < Math.min(tokens.size(), from + 4); next++) {
            var token = tokens.get(next);
            if (!token.is(Kind.WORD) && !token.is(Kind.NUMBER)) {
                break;
            }
            words.append(token.text().equalsIgnoreCase("tag") ? "" : " " + token.text());
            var found =
                    names.find(said.text.substring(last.start(), last.end()) + words)
                            .or(() -> names.find(name + words));
            if (found.isPresent() && !leavesTheLineOpen(found.get())) {
                said.mentions.removeLast();
                said.mentions.add(last.withMeaning(found.get(), token.end()));
                boolean closed = next + 1 < tokens.size() && tokens.get(next + 1).is(Kind.CLOSE);
                at = closed ? next + 2 : next + 1;
                afterName = at;
                return true;
            }
        }
        return false;
    }

    private boolean leavesTheLineOpen(Meaning meaning) {
        return meaning instanceof Meaning.OneOf
                || (meaning instanceof Meaning.OfAllele(var _, var allele)
                        && !catalogue.theTrait(allele).asks().isEmpty());
    }

    private void line(Token token) {
        boolean named =
                at + 1 < tokens.size()
                        && (tokens.get(at + 1).is(Kind.WORD)
                                || tokens.get(at + 1).is(Kind.NUMBER)
                                || tokens.get(at + 1).is(Kind.QUOTED));
        if (named) {
            int end = tokens.get(at + 1).end();
            said.remark(token.start(), end, said.text.substring(token.start(), end));
            at += 2;
        } else {
            at = unknown.report(tokens, at, afterName);
        }
    }

    private void finish() {
        for (var status : said.statuses) {
            if (!status.governs && said.faults.stream().noneMatch(f -> f.start() >= status.end)) {
                said.fault(FaultKind.NOTHING_FOLLOWS, status.start, status.end, List.of());
            }
        }
        waiting.filter(span -> said.faults.stream().noneMatch(f -> f.start() >= span.end()))
                .ifPresent(
                        span ->
                                said.fault(
                                        FaultKind.NOTHING_FOLLOWS,
                                        span.start(),
                                        span.end(),
                                        List.of()));
    }
}
