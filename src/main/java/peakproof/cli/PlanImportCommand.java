package peakproof.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import peakproof.document.Documents;
import peakproof.document.Dossier;
import peakproof.document.Fault;
import peakproof.document.Reading;
import peakproof.document.Splice;
import peakproof.intake.PlanSheet;
import peakproof.intake.Received;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Brings a table of planned sessions into a plan. */
@Command(
    name = "import",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description = {
      "Writes the sessions of a table (CSV) into the days of a plan that have none.",
      "Weeks that are not there are begun; what is there stays as it is."
    },
    footer = {
      "",
      "Example: show what a table would add, then add it",
      "  peakproof plan import plans/runa/plan.yaml weeks.csv --dry-run",
      "  peakproof plan import plans/runa/plan.yaml weeks.csv"
    })
final class PlanImportCommand implements Callable<Integer> {
  private final Messages messages;

  @Spec private CommandSpec command;

  @Parameters(index = "0", paramLabel = "PLAN", description = "A plan, or the folder it lies in.")
  private Path plan = Path.of("");

  @Parameters(index = "1..*", arity = "1..*", paramLabel = "FILE", description = "Tables (.csv).")
  private List<Path> files = List.of();

  @Mixin private IntakeOptions intake = new IntakeOptions();
  @Mixin private HouseOption house = new HouseOption();

  PlanImportCommand(Messages messages) {
    this.messages = messages;
  }

  @Override
  public Integer call() {
    Path file = Files.isDirectory(plan) ? plan.resolve("plan.yaml") : plan;
    Reading reading = Documents.read(file, house.named());
    List<Fault> faults = new ArrayList<>(reading.faults());
    List<Received> all = intake.all(files, intake::planned, faults);
    Dossier dossier = reading.dossier();
    SplicedFile document = SplicedFile.open(file);
    Splice splice = document.splice();
    if (!faults.isEmpty() || dossier == null || splice == null) {
      messages.tell(faults);
      return ExitCode.WRONG_DOCUMENT.number();
    }
    PlanSheet sheet = new PlanSheet(dossier.plan(), splice.content(), dossier.positions());
    IntakePage page = new IntakePage();
    all.forEach(received -> page.add(received, sheet.add(received.sessions())));
    return document
        .finish(
            sheet.content(),
            page.taken(),
            intake.dryRun(),
            tree -> Documents.readAs(file, tree, house.named()).faults(),
            messages,
            done -> command.commandLine().getOut().print(page.text(done)))
        .number();
  }
}
