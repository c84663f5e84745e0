package org.lynchet.prescription.cli;

import org.lynchet.prescription.cli.HandoffCommand.Receiver;
import org.lynchet.prescription.fault.PrintableText;
import org.lynchet.prescription.plan.HandoffChoices.Format;
import picocli.AutoComplete.GenerateCompletion;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.Spec;

/** The program's entry: finds the command and returns its exit code. */
@Command(
    name = "lynchet",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    usageHelpWidth = 100,
    header = "Lays a tall and a short crop out in strips and writes the files that plant them.",
    synopsisSubcommandLabel = "COMMAND",
    subcommands = {
      PlanCommand.class,
      FitCommand.class,
      LightCommand.class,
      BudgetCommand.class,
      CompareCommand.class,
      CheckCommand.class,
      HandoffCommand.class,
      ConvertCommand.class,
      GenerateCompletion.class
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  lynchet fit sandhill-east.yaml",
      "  lynchet light sandhill-east.yaml",
      "  lynchet budget sandhill-east.yaml",
      "  lynchet compare sandhill-east.yaml",
      "  lynchet plan sandhill-east.yaml",
      "  lynchet plan sandhill-east.yaml --out to-planter --png",
      "  lynchet check to-planter",
      "  lynchet handoff sandhill-east.yaml --to applicator",
      "  lynchet convert taskdata.zip#PFD1 --to geojson field.geojson",
      "  source <(lynchet generate-completion)        completion in bash and zsh",
      "",
      "Results go to standard output, everything else to standard error. NO_COLOR turns colours off.",
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      ExitCodes.DONE,
      ExitCodes.OUR_FAULT,
      ExitCodes.USAGE,
      ExitCodes.FAULTS,
    })
public final class Lynchet implements Runnable {
  @Spec private CommandSpec spec;

  @SuppressWarnings("NullAway.Init") // picocli sets it
  private Lynchet() {}

  /** Runs one command and ends the program with its exit code. */
  public static void main(String[] args) {
    System.exit(run(args));
  }

  private static int run(String[] args) {
    try {
      int code = commandLine().execute(args);
      return System.out.checkError() ? resultsLost(code) : code;
    } catch (OutOfMemoryError tooLarge) {
      System.err.println(
          "The memory ran out; nothing was written. The files have more vertices than fit.");
      System.err.println(
          "Give the program more, as in LYNCHET_JAVA_OPTS=-Xmx4g, or thin the boundary out.");
      return CommandLine.ExitCode.SOFTWARE;
    }
  }

  /** A disk that is full, or a reader that has ended. */
  private static int resultsLost(int code) {
    System.err.println("Not all results could be written to standard output.");
    System.err.println("Give it room, or let what reads it read to the end, and run this again.");
    return code == 0 ? CommandLine.ExitCode.SOFTWARE : code;
  }

  static CommandLine commandLine() {
    return new CommandLine(new Lynchet())
        .setExecutionExceptionHandler(new FaultReport())
        .setParameterExceptionHandler(Lynchet::tellUsage)
        .setExecutionStrategy(Lynchet::execute)
        .registerConverter(Format.class, new OneOf<>(Format.class))
        .registerConverter(Receiver.class, new OneOf<>(Receiver.class));
  }

  /** Help in colours as it is; results with nothing in them that steers a terminal. */
  private static int execute(ParseResult parsed) {
    Integer help = CommandLine.executeHelpRequest(parsed);
    if (help != null) {
      return help;
    }
    for (CommandLine command : parsed.asCommandLineList()) {
      command.setOut(PlainWriter.to(command.getOut()));
    }
    return new CommandLine.RunLast().execute(parsed);
  }

  /** What is wrong with the words on the command line, among them names of files. */
  private static int tellUsage(ParameterException wrong, String[] words) {
    CommandLine command = wrong.getCommandLine();
    command
        .getErr()
        .println(
            command
                .getColorScheme()
                .errorText(PrintableText.oneLine(String.valueOf(wrong.getMessage()))));
    if (!CommandLine.UnmatchedArgumentException.printSuggestions(wrong, command.getErr())) {
      command.usage(command.getErr(), command.getColorScheme());
    }
    command.getErr().flush();
    return command.getCommandSpec().exitCodeOnInvalidInput();
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "Name a command.");
  }
}
