package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The script that completes commands, as the shell itself sees it. */
class CompletionCommandTest {
    @TempDir
    Path folder;

    @Test
    void bashCompletesACommand() throws IOException, InterruptedException {
        assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "no bash here");
        Run run = Run.of("completion");
        run.assertCode(0);
        Path script = Files.writeString(folder.resolve("quadmean.bash"), run.out());
        Process bash = new ProcessBuilder(
                        "/bin/bash",
                        "-c",
                        "bash -n \"$0\" && source \"$0\" && COMP_WORDS=(quadmean esti) COMP_CWORD=1 COMP_LINE='quadmean esti' &&"
                                + " _complete_quadmean && echo \"${COMPREPLY[0]}\"",
                        script.toString())
                .redirectErrorStream(true)
                .start();
        String reply = new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, bash.waitFor(), reply);
        assertTrue(reply.lines().anyMatch(l -> l.trim().equals("estimate")), reply);
    }
}
