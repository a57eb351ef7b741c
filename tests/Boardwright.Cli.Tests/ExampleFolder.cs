using Boardwright.Testing;

namespace Boardwright.Cli.Tests;

/// <summary>The folder examples are written for: the root of a checkout, of which they see the demonstration and may write beside it.</summary>
internal static class ExampleFolder
{
    private static readonly Lazy<string> Made = new(() =>
    {
        var root = Directory.CreateTempSubdirectory("boardwright-examples-").FullName;
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(root, recursive: true);
        Copy(new(Repository.PathOf("demo")), Path.Combine(root, "demo"));
        return root;
    });

    /// <summary>Makes it the folder this process stands in.</summary>
    public static void Enter() => Directory.SetCurrentDirectory(Made.Value);

    private static void Copy(DirectoryInfo from, string to)
    {
        Directory.CreateDirectory(to);
        foreach (var file in from.EnumerateFiles())
            file.CopyTo(Path.Combine(to, file.Name));
        foreach (var folder in from.EnumerateDirectories())
            Copy(folder, Path.Combine(to, folder.Name));
    }
}
