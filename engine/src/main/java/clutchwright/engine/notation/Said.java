package clutchwright.engine.notation;

import clutchwright.engine.notation.Reading.Fault;
import clutchwright.engine.notation.Reading.Fault.FaultKind;
import clutchwright.engine.notation.Reading.Note;
import clutchwright.engine.notation.Reading.Note.NoteKind;
import clutchwright.engine.notation.Reading.Part;
import clutchwright.engine.notation.Reading.Part.PartKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// What the grammar found in a line, before names are weighed against one another.
final class Said {

    /// A stretch of the text.
    record Span(int start, int end) {}

    record PhaseWord(Span span, boolean maleMaker) {}

    final String text;
    final List<Mention> mentions = new ArrayList<>();
    final List<HetStatus> statuses = new ArrayList<>();
    final List<Span> normals = new ArrayList<>();
    final List<PhaseWord> phases = new ArrayList<>();
    final List<String> remarks = new ArrayList<>();
    final List<Span> notesInParentheses = new ArrayList<>();
    final List<Fault> faults = new ArrayList<>();
    final List<Note> notes = new ArrayList<>();
    final List<Part> parts = new ArrayList<>();
    Optional<Genes.Group> group = Optional.empty();
    boolean groupCounted;

    Said(String text) {
        this.text = text;
    }

    void fault(FaultKind kind, int start, int end, List<String> names) {
        faults.add(new Fault(start, end, kind, text.substring(start, end), names));
    }

    void note(NoteKind kind, int start, int end, List<String> names) {
        notes.add(new Note(start, end, kind, names));
    }

    void part(PartKind kind, int start, int end, String readAs) {
        parts.add(new Part(start, end, kind, readAs));
    }

    void statusWord(int start, int end) {
        part(PartKind.STATUS_WORD, start, end, text.substring(start, end));
    }

    void remark(int start, int end, String remark) {
        remarks.add(remark);
        part(PartKind.REMARK, start, end, remark);
    }
}
