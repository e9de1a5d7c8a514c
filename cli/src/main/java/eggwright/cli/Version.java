package eggwright.cli;

import picocli.CommandLine.IVersionProvider;

/** The version in the jar's manifest. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        var version = Version.class.getPackage().getImplementationVersion();
        return new String[] {"eggwright " + (version == null ? "(not packaged)" : version)};
    }
}
