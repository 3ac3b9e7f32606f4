package peakproof.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints the script by which a shell completes commands and options of this program. */
@Command(
    name = CompletionCommand.NAME,
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description = "Prints a script that lets a shell complete commands, options and files.",
    footer = {
      "",
      "Examples: into a file that ~/.bashrc reads with 'source'; for this zsh alone",
      "  peakproof completion bash --output ~/.peakproof-completion",
      "  source <(peakproof completion zsh)"
    })
final class CompletionCommand implements Callable<Integer> {
  /** It tells of all commands, so it needs them. */
  static final String NAME = "completion";

  /** The shells that have such a script. */
  enum Shell {
    BASH,
    ZSH
  }

  private final Messages messages;

  @Spec private CommandSpec command;

  @Parameters(paramLabel = "bash|zsh", description = "The shell; one script does for both.")
  private Shell shell = Shell.BASH;

  @Mixin private OutputOptions output = new OutputOptions();

  CompletionCommand(Messages messages) {
    this.messages = messages;
  }

  @Override
  public Integer call() {
    CommandLine program = command.root().commandLine();
    String script =
        switch (shell) {
          case BASH, ZSH -> AutoComplete.bash(program.getCommandName(), program);
        };
    return output.write(script, messages).number();
  }
}
