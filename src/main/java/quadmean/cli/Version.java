package quadmean.cli;

import picocli.CommandLine.IVersionProvider;

/** The version written into the jar. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        String version = Main.class.getPackage().getImplementationVersion();
        return new String[] {"quadmean " + (version == null ? "(built from source)" : version)};
    }
}
