package clutchwright.app;

import clutchwright.app.cli.Exit;
import clutchwright.app.cli.Terminal;
import clutchwright.app.collection.InferCommand;
import clutchwright.app.collection.KinshipCommand;
import clutchwright.app.eggs.BoxCommand;
import clutchwright.app.eggs.ConductanceCommand;
import clutchwright.app.eggs.HatchCommand;
import clutchwright.app.projects.RouteCommand;
import clutchwright.app.proofs.AuditCommand;
import clutchwright.app.proofs.ProveCommand;
import clutchwright.app.season.LayCommand;
import clutchwright.app.season.PlanCommand;
import clutchwright.app.season.PredictCommand;
import clutchwright.app.settings.BackupCommand;
import clutchwright.app.settings.ExportCommand;
import clutchwright.app.settings.ImportCommand;
import clutchwright.app.settings.RestoreCommand;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.UnmatchedArgumentException;

/// The command line: the list of commands, one a line.
@Command(
        name = "clutchwright",
        description = "The working tool of a snake breeder.",
        synopsisSubcommandLabel = "COMMAND",
        commandListHeading = "%nCommands:%n",
        optionListHeading = "%n",
        sortOptions = false,
        footer = {
            "",
            "Try `clutchwright serve --demo` first. `clutchwright COMMAND --help` says more.",
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
                .execute(arguments.length == 0 ? new String[] {"--help"} : arguments);
    }

    private static CommandLine commands(Terminal terminal) {
        var commands = new CommandLine(new Clutchwright());
        commands.getCommandSpec().addOption(help());
        return commands.addSubcommand(new ServeCommand(terminal))
                .addSubcommand(new PredictCommand(terminal))
                .addSubcommand(new InferCommand(terminal))
                .addSubcommand(new KinshipCommand(terminal))
                .addSubcommand(new ProveCommand(terminal))
                .addSubcommand(new AuditCommand(terminal))
                .addSubcommand(new RouteCommand(terminal))
                .addSubcommand(new LayCommand(terminal))
                .addSubcommand(new PlanCommand(terminal))
                .addSubcommand(new BoxCommand(terminal))
                .addSubcommand(new ConductanceCommand(terminal))
                .addSubcommand(new HatchCommand(terminal))
                .addSubcommand(new ImportCommand(terminal))
                .addSubcommand(new ExportCommand(terminal))
                .addSubcommand(new BackupCommand(terminal))
                .addSubcommand(new RestoreCommand(terminal))
                .addSubcommand(new RehearseCommand(terminal))
                .setOut(terminal.result())
                .setErr(terminal.messages())
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setParameterExceptionHandler(
                        (wrong, args) -> {
                            terminal.say(explain(wrong));
                            terminal.say(
                                    "`%s --help` lists what is possible."
                                            .formatted(
                                                    wrong.getCommandLine()
                                                            .getCommandSpec()
                                                            .qualifiedName()));
                            return Exit.BAD_INPUT.status();
                        })
                .setExecutionExceptionHandler(
                        (fault, command, parsed) -> {
                            terminal.say("A fault of the program, please report it: " + fault);
                            fault.printStackTrace(terminal.messages());
                            return Exit.FAULT.status();
                        });
    }

    private static OptionSpec help() {
        return OptionSpec.builder("-h", "--help")
                .usageHelp(true)
                .scopeType(ScopeType.INHERIT)
                .description("Say what is possible.")
                .build();
    }

    private static String explain(ParameterException wrong) {
        if (wrong instanceof UnmatchedArgumentException unmatched
                && wrong.getCommandLine().getParent() == null) {
            var near = unmatched.getSuggestions();
            return "There is no command “%s”.%s"
                    .formatted(
                            unmatched.getUnmatched().getFirst(),
                            near.isEmpty() ? "" : " Near to it: " + String.join(", ", near) + ".");
        }
        return String.valueOf(wrong.getMessage());
    }
}
