package clutchwright.records.exchange.sheets;

/// Carries a fault out of the depth of a reader; never leaves this package.
final class Rejected extends Exception {

    private static final long serialVersionUID = 1;

    private final transient FileFault fault;

    Rejected(FileFault fault) {
        super(fault.toString(), null, false, false);
        this.fault = fault;
    }

    FileFault fault() {
        return fault;
    }
}
