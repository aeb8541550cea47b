package clutchwright.app.cli;

/// How a command ended, as other programs read it.
public enum Exit {
    DONE(0),
    /// Something that the command exists to report.
    FINDING(1),
    /// The input or the arguments are wrong; nothing was changed.
    BAD_INPUT(2),
    /// A fault of the program.
    FAULT(3);

    private final int status;

    Exit(int status) {
        this.status = status;
    }

    public int status() {
        return status;
    }
}
