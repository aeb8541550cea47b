package clutchwright.engine.notation;

import clutchwright.engine.notation.Genes.Group;
import clutchwright.engine.notation.Reading.Fault.FaultKind;
import clutchwright.engine.notation.Reading.Part.PartKind;
import clutchwright.engine.notation.Said.PhaseWord;
import clutchwright.engine.notation.Said.Span;
import java.util.List;
import java.util.Optional;

/// Reads sexes, numbers of animals, and the phase of a sex-linked gene.
final class AnimalWords {

    private final Cursor cursor;
    private final Said said;

    AnimalWords(Cursor cursor, Said said) {
        this.cursor = cursor;
        this.said = said;
    }

    /// `male`, or `male maker`.
    void sexOrPhase() {
        var token = cursor.token();
        int after = cursor.afterHyphen();
        boolean male = token.role() == Role.MALE;
        if (cursor.isRole(after, Role.MAKER)) {
            phase(token.start(), cursor.tokens.get(after).end(), male);
            cursor.at = after + 1;
        } else {
            sex(male);
        }
    }

    void sex(boolean male) {
        animals(new Group(male ? 1 : 0, male ? 0 : 1, 0), false);
    }

    void unsexed() {
        animals(new Group(0, 0, 1), false);
    }

    /// `MM`, `FM`.
    void phase(boolean maleMaker) {
        phase(cursor.token().start(), cursor.token().end(), maleMaker);
        cursor.at++;
    }

    /// `1.0`
    ///
    /// @return whether it is a number of animals
    boolean counts() {
        var group = GroupCounts.of(cursor.token().text());
        group.ifPresent(counted -> animals(counted, true));
        return group.isPresent();
    }

    private void phase(int start, int end, boolean maleMaker) {
        said.phases.add(new PhaseWord(new Span(start, end), maleMaker));
        said.statusWord(start, end);
    }

    private void animals(Group group, boolean counted) {
        var token = cursor.token();
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
        cursor.at++;
    }
}
