package clutchwright.app;

import clutchwright.app.cli.Exit;
import clutchwright.app.cli.Terminal;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/// The command line: the list of commands, one a line.
@Command(
        name = "clutchwright",
        description = "The working tool of a snake breeder.",
        synopsisSubcommandLabel = "COMMAND",
        footer = {
            "",
            "Try `clutchwright serve --demo` first. `clutchwright help COMMAND` says more.",
            "Everything stays on this computer."
        })
public final class Clutchwright {

    private Clutchwright() {}

    public static void main(String[] arguments) {
        System.exit(run(Terminal.ofProcess(), arguments));
    }

    /// Runs one command.
    ///
    /// @return the exit status, as [Exit] lists them
    public static int run(Terminal terminal, String... arguments) {
        return commands(terminal)
                .execute(arguments.length == 0 ? new String[] {"help"} : arguments);
    }

    private static CommandLine commands(Terminal terminal) {
        return new CommandLine(new Clutchwright())
                .addSubcommand(new ServeCommand(terminal))
                .addSubcommand(new RehearseCommand(terminal))
                .addSubcommand(new CommandLine.HelpCommand())
                .setOut(terminal.result())
                .setErr(terminal.messages())
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setParameterExceptionHandler(
                        (wrong, args) -> {
                            terminal.say(String.valueOf(wrong.getMessage()));
                            terminal.say(
                                    "`clutchwright help%s` lists what is possible."
                                            .formatted(nameAfterHelp(wrong.getCommandLine())));
                            return Exit.BAD_INPUT.status();
                        })
                .setExecutionExceptionHandler(
                        (fault, command, parsed) -> {
                            terminal.say("A fault of the program, please report it: " + fault);
                            fault.printStackTrace(terminal.messages());
                            return Exit.FAULT.status();
                        });
    }

    private static String nameAfterHelp(CommandLine command) {
        return command.getParent() == null ? "" : " " + command.getCommandName();
    }
}
