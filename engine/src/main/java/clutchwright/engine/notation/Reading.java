package clutchwright.engine.notation;

import java.util.List;

/// How a line was understood.
public sealed interface Reading {

    /// The parts of the line that were understood, in order, for reading back.
    List<Part> parts();

    /// @param notes what deserves a word though nothing is wrong: a contradiction dropped, a
    ///     claim of
    ///     something reported not to live
    record Understood(Genes genes, List<Part> parts, List<Note> notes) implements Reading {

        public Understood {
            parts = List.copyOf(parts);
            notes = List.copyOf(notes);
        }
    }

    /// @param faults all of them, at least one
    record Unclear(List<Fault> faults, List<Part> parts) implements Reading {

        public Unclear {
            faults = List.copyOf(faults);
            parts = List.copyOf(parts);
        }
    }

    /// A stretch of the line and how it was read.
    ///
    /// @param start first character, counted from 0
    /// @param end one past the last
    record Part(int start, int end, PartKind kind, String readAs) {
        public enum PartKind {
            SHOWS,
            CARRIES,
            ANIMALS,
            REMARK,
            STATUS_WORD
        }
    }

    record Note(int start, int end, NoteKind kind, List<String> names) {
        public enum NoteKind {
            /// A visual animal was also called het of the same gene: the het was dropped.
            HET_OF_WHAT_SHOWS,
            /// `Super` or `homozygous` before a recessive: read as visual.
            SUPER_OF_RECESSIVE,
            /// A pair of alleles that is reported not to live.
            REPORTED_NOT_TO_LIVE,
            /// `het` of an allele that shows in one copy: read as one visible copy.
            HET_THAT_SHOWS,
            /// A redundant name for what the line already says.
            SAID_TWICE,
            /// A phase is not given though it decides the sexes of the offspring.
            PHASE_NOT_GIVEN,
            /// A combination with a welfare caution.
            CAUTION,
            /// A name that was misspelt and could mean only one thing.
            SPELLING,
            /// A gene of which the line was not said: it may be any of the names after the first.
            WHICH_LINE,
            /// A note in the line from which hets could be derived; proposed, not set.
            PROPOSAL
        }

        public Note {
            names = List.copyOf(names);
        }
    }

    /// @param start first character, counted from 0
    /// @param found what stands there
    /// @param names nearest or possible names, best first; alleles in conflict
    record Fault(int start, int end, FaultKind kind, String found, List<String> names) {
        public enum FaultKind {
            UNKNOWN_NAME,
            /// One name, several meanings: choose one of the names.
            SEVERAL_MEANINGS,
            /// `possible het` without a number.
            CHANCE_MISSING,
            /// Not a chance above 0 and at most 100 %.
            BAD_CHANCE,
            /// More than two alleles of one locus.
            TOO_MANY_ALLELES,
            /// `het` or a percentage with no gene after it.
            NOTHING_FOLLOWS,
            /// `double het` with more or fewer genes than it counts.
            COUNT_DOES_NOT_FIT,
            /// Two statements that exclude each other: Normal and a visible gene, male and female.
            CONTRADICTION,
            /// A pairing where one animal was expected.
            IS_A_PAIRING,
            TOO_LONG
        }

        public Fault {
            names = List.copyOf(names);
        }
    }
}
