package clutchwright.records.exchange.sheets;

/// How a file was read.
public sealed interface SheetReading {

    record Read(Sheet sheet) implements SheetReading {}

    record Unreadable(FileFault fault) implements SheetReading {}
}
