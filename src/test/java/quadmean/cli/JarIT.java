package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The packaged program, run as a user runs it: its own process, its own folder. */
class JarIT {
    private static final Path JAR = Path.of("target/quadmean.jar").toAbsolutePath();

    @TempDir
    private Path folder;

    private record Run(int code, String out, String err) {}

    @Test
    void tellsItsVersion() throws Exception {
        Run run = run("--version");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().matches("quadmean \\d+\\.\\d+\\.\\d+\\s*"), run.out());
    }

    /** Licences and notices travel with the program. */
    @Test
    void carriesItsLicenceAndTheNoticesOfOthers() throws Exception {
        try (java.util.jar.JarFile jar = new java.util.jar.JarFile(JAR.toFile())) {
            for (String name : List.of("LICENSE", "THIRD-PARTY.txt", "CHANGELOG.md", "datasets/README.md")) {
                assertTrue(jar.getEntry("META-INF/quadmean/" + name) != null, name);
            }
        }
    }

    @Test
    void estimatesTheDemonstrationStand() throws Exception {
        Run run = run("estimate", Path.of("designs/demo.toml").toAbsolutePath().toString());
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("Target missed"), run.out());
        assertTrue(run.err().contains("dbh-missing"), run.err());
        String report = Files.readString(folder.resolve("out/demo/report.html"));
        assertTrue(report.contains("<svg"), "charts are drawn from the jar");
        assertTrue(Files.size(folder.resolve("out/demo/estimate.json")) > 1000);
    }

    /** Unpacked, and started through a link in another folder, as an installation is; the other launcher is for Windows alone. */
    @Test
    @DisabledOnOs(OS.WINDOWS)
    void theZipHoldsAProgramThatStarts() throws Exception {
        Path home = unpack();
        Path link = Files.createSymbolicLink(
                Files.createDirectory(folder.resolve("my bin")).resolve("quadmean"), home.resolve("quadmean"));
        Run version = start(List.of("/bin/sh", link.toString(), "--version"));
        assertEquals(0, version.code(), version.err());
        assertTrue(version.out().startsWith("quadmean "), version.out());
        Run estimate = start(List.of(
                "/bin/sh",
                link.toString(),
                "estimate",
                home.resolve("designs/demo.toml").toString(),
                "--json"));
        assertEquals(0, estimate.code(), estimate.err());
        assertTrue(estimate.out().startsWith("{\"command\":\"estimate\",\"exitCode\":0,"), estimate.out());
        for (String name : List.of("quadmean.cmd", "LICENSE", "THIRD-PARTY.txt", "CHANGELOG.md", "README.md")) {
            assertTrue(Files.isRegularFile(home.resolve(name)), name);
        }
    }

    private Path unpack() throws IOException {
        Path zip;
        try (Stream<Path> files = Files.list(JAR.getParent())) {
            zip = files.filter(f -> f.toString().endsWith(".zip")).findFirst().orElseThrow();
        }
        Path to = folder.resolve("unpacked");
        try (FileSystem inside = FileSystems.newFileSystem(zip);
                Stream<Path> entries = Files.walk(inside.getPath("/"))) {
            for (Path entry : entries.toList()) {
                Path target = to.resolve(inside.getPath("/").relativize(entry).toString());
                if (Files.isDirectory(entry)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(entry, target);
                }
            }
        }
        try (Stream<Path> homes = Files.list(to)) {
            return homes.findFirst().orElseThrow();
        }
    }

    @Test
    void refusesWhatIsBrokenWithoutAStackTrace() throws Exception {
        Path design = Files.writeString(folder.resolve("broken.toml"), "schema = 1\n[cruise]\nnam = \"x\"\n");
        Run run = run("estimate", design.toString());
        assertEquals(1, run.code());
        assertTrue(run.err().contains("did you mean \"name\"?"), run.err());
        assertTrue(!run.err().contains("\tat "), run.err());
        try (var files = Files.list(folder.resolve("out/broken"))) {
            assertEquals(
                    List.of("problems.csv"),
                    files.map(f -> f.getFileName().toString()).toList());
        }
    }

    @Test
    void aMissingDesignIsWrongUsage() throws Exception {
        Run run = run("check", "nowhere.toml");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("nowhere.toml"), run.err());
    }

    private Run run(String... args) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-jar", JAR.toString()));
        command.addAll(List.of(args));
        return start(command);
    }

    private Run start(List<String> command) throws IOException, InterruptedException {
        Path out = folder.resolve("stdout.txt");
        Path err = folder.resolve("stderr.txt");
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        assertTrue(process.waitFor(60, TimeUnit.SECONDS), "ends within a minute");
        return new Run(
                process.exitValue(),
                Files.readString(out, StandardCharsets.UTF_8),
                Files.readString(err, StandardCharsets.UTF_8));
    }
}
