package clutchwright.engine.notation;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.catalogue.Meaning;
import clutchwright.engine.notation.Mention.Asked;
import clutchwright.engine.notation.Reading.Fault.FaultKind;
import clutchwright.engine.notation.Reading.Part.PartKind;
import clutchwright.engine.notation.Said.Span;
import clutchwright.engine.notation.StatusWords.Run;
import clutchwright.engine.notation.Token.Kind;
import java.util.List;
import java.util.Optional;

/// Reads a row of tokens into mentions of names and the status words that govern them.
///
/// `het` governs every following name until a new percentage, a new status word or the end.
final class Grammar {

    private static final int WORDS_THAT_SETTLE = 4;

    private final Catalogue catalogue;
    private final Said said;
    private final Cursor cursor;
    private final Governing governing;
    private final AnimalWords animals;
    private final KeptWords kept;
    private final UnknownWords unknown;

    private Grammar(Catalogue catalogue, String text, int from, int to) {
        this.catalogue = catalogue;
        this.said = new Said(text);
        this.cursor = new Cursor(catalogue, text, from, to);
        this.governing = new Governing(said);
        this.animals = new AnimalWords(cursor, said);
        this.kept = new KeptWords(cursor, said);
        this.unknown = new UnknownWords(catalogue, cursor.names, said);
    }

    static Said read(Catalogue catalogue, String text, int from, int to) {
        var grammar = new Grammar(catalogue, text, from, to);
        while (!grammar.cursor.isAtEnd()) {
            grammar.next();
        }
        grammar.governing.finish();
        return grammar.said;
    }

    private void next() {
        var token = cursor.token();
        var match = cursor.longestName(cursor.at);
        if (match.isPresent() && (match.get().severalWords() || !isStatusWord(token))) {
            name(match.get());
            return;
        }
        if (settlesTheLine()) {
            return;
        }
        var run = StatusWords.at(cursor.names, said.text, cursor.tokens, cursor.at);
        if (run.isPresent()) {
            status(run.get());
            return;
        }
        switch (token.kind()) {
            case WORD -> word(token);
            case NUMBER, DOTTED -> number(token);
            case OPEN -> kept.open();
            case MALE -> animals.sex(true);
            case FEMALE -> animals.sex(false);
            case DOUBT -> doubtSign(token);
            case QUOTED -> kept.token();
            case TIMES, STRANGE -> strange(token);
            case PERCENT -> {
                said.fault(FaultKind.BAD_CHANCE, token.start(), token.end(), List.of());
                cursor.at++;
            }
            case COMMA, SLASH, JOIN, PLUS, AND, CLOSE, ABOUT -> cursor.at++;
        }
    }

    private static boolean isStatusWord(Token token) {
        var role = token.role();
        return role != Role.NONE && role != Role.ORIGIN && role != Role.LINE;
    }

    private void name(Names.Match match) {
        var first = cursor.token();
        int end = cursor.tokens.get(match.next() - 1).end();
        if (match.meaning() instanceof Meaning.OfRemark(var name, var _)) {
            said.remark(first.start(), end, name);
            cursor.at = match.next();
            return;
        }
        if (first.role() == Role.HET) {
            governing.nameWithHet();
        }
        if (isTheSameAgain(match.meaning())) {
            said.mentions.add(said.mentions.removeLast().twice(end));
        } else {
            said.mentions.add(
                    governing.mention(match.meaning(), first.start(), end, cursor.isTied()));
        }
        governing.nameIsSaid(isHiddenAllele(match.meaning()));
        cursor.passName(match.next());
    }

    private boolean isHiddenAllele(Meaning meaning) {
        return meaning instanceof Meaning.OfAllele(var _, var allele)
                && !Choice.showsAlone(allele, catalogue.model().theLocus(allele.locus()));
    }

    /// `Pastel Pastel`, `Pastel/Pastel`.
    private boolean isTheSameAgain(Meaning meaning) {
        if (said.mentions.isEmpty() || !(meaning instanceof Meaning.OfAllele)) {
            return false;
        }
        var last = said.mentions.getLast();
        return cursor.isBesideName()
                && governing.isSilent()
                && last.asked() == Asked.PLAIN
                && last.het().isEmpty()
                && last.meaning().equals(meaning);
    }

    private void status(Run run) {
        if (cursor.splitUnknown(run.next())) {
            return;
        }
        var first = cursor.token();
        int end = cursor.tokens.get(run.next() - 1).end();
        int start = cursor.at;
        cursor.at = run.next();
        for (var span : run.badChances()) {
            said.fault(FaultKind.BAD_CHANCE, span.start(), span.end(), List.of());
        }
        if (run.negative()) {
            governing.endHets();
            kept.negative(first);
            return;
        }
        said.statusWord(first.start(), end);
        if (run.contradicts()) {
            said.fault(FaultKind.CONTRADICTION, first.start(), end, List.of());
        }
        boolean inParentheses = cursor.is(start - 1, Kind.OPEN);
        if (nothingAfter() && cursor.followsName(start) && (inParentheses || !run.het())) {
            backwards(run, first.start(), end);
        } else if (run.het() || run.hasNumber()) {
            governing.begin(run, first.start(), end);
        } else if (run.possible()) {
            governing.doubt(first.start(), end);
        }
    }

    private boolean nothingAfter() {
        return cursor.isAtEnd()
                || cursor.is(cursor.at, Kind.COMMA)
                || cursor.is(cursor.at, Kind.CLOSE);
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

    private void word(Token token) {
        switch (token.role()) {
            case SUPER -> ask(token, Asked.SUPER);
            case HOMOZYGOUS -> ask(token, Asked.TWO_COPIES);
            case VISUAL -> ask(token, Asked.VISUAL);
            case MALE, FEMALE -> animals.sexOrPhase();
            case UNSEXED -> animals.unsexed();
            case MALE_MAKER -> animals.phase(true);
            case FEMALE_MAKER -> animals.phase(false);
            case NORMAL -> normal(token, cursor.at);
            case WILD -> wild(token);
            case OR -> {
                governing.or();
                cursor.at++;
            }
            case AND, FOR -> cursor.at++;
            case ORIGIN -> kept.token();
            case LINE -> {
                if (!kept.line()) {
                    splitOrReport();
                }
            }
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
                    splitOrReport();
        }
    }

    private void splitOrReport() {
        if (!cursor.split(cursor.at)) {
            cursor.at = unknown.report(cursor.tokens, cursor.at, cursor.afterName());
        }
    }

    private void ask(Token token, Asked how) {
        said.statusWord(token.start(), token.end());
        governing.ask(token, how);
        cursor.at++;
    }

    private void wild(Token token) {
        int after = cursor.afterHyphen();
        if (cursor.isRole(after, Role.TYPE)) {
            normal(token, after);
        } else {
            splitOrReport();
        }
    }

    private void normal(Token first, int last) {
        int end = cursor.tokens.get(last).end();
        said.normals.add(new Span(first.start(), end));
        said.part(PartKind.SHOWS, first.start(), end, "Normal");
        cursor.at = last + 1;
    }

    private void number(Token token) {
        boolean year = token.text().matches("(19|20)\\d\\d");
        if (year) {
            kept.token();
        } else if (token.is(Kind.NUMBER) || !animals.counts()) {
            strange(token);
        }
    }

    private void strange(Token token) {
        unknown.strange(token);
        cursor.at++;
    }

    private void doubtSign(Token token) {
        int here = cursor.at;
        said.statusWord(token.start(), token.end());
        if (cursor.followsName(here)) {
            var last = said.mentions.removeLast();
            said.mentions.add(last.doubted(last.chance()));
            cursor.passName(here + 1);
        } else {
            governing.doubt(token.start(), token.end());
            cursor.at++;
        }
    }

    /// `Axanthic (line tag 2)`, `Axanthic line 2`: the words after an open name settle it.
    private boolean settlesTheLine() {
        if (!cursor.followsName(cursor.at)
                || !leavesTheLineOpen(said.mentions.getLast().meaning())) {
            return false;
        }
        var last = said.mentions.getLast();
        int from = cursor.is(cursor.at, Kind.OPEN) ? cursor.at + 1 : cursor.at;
        var words = new StringBuilder();
        for (int next = from; next < from + WORDS_THAT_SETTLE; next++) {
            if (!cursor.is(next, Kind.WORD) && !cursor.is(next, Kind.NUMBER)) {
                break;
            }
            var token = cursor.tokens.get(next);
            words.append(token.text().equalsIgnoreCase("tag") ? "" : " " + token.text());
            var found =
                    cursor.names
                            .find(cursor.slice(last.start(), last.end()) + words)
                            .or(() -> cursor.names.find(last.meaning().name() + words));
            if (found.isPresent() && !leavesTheLineOpen(found.get())) {
                said.mentions.removeLast();
                said.mentions.add(last.withMeaning(found.get(), token.end()));
                cursor.passName(cursor.is(next + 1, Kind.CLOSE) ? next + 2 : next + 1);
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
}
