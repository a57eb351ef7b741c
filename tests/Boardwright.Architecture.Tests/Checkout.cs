using Boardwright.Testing;

namespace Boardwright.Architecture.Tests;

/// <summary>The files people wrote, without what builds and tests leave behind.</summary>
internal static class Checkout
{
    private static readonly HashSet<string> Left = ["bin", "obj", "node_modules", ".git", "data", "pictures", "artifacts", "built"];

    private static readonly Lazy<IReadOnlyList<string>> All = new(() => [.. Under(new DirectoryInfo(Repository.Root)).Order(StringComparer.Ordinal)]);

    /// <summary>Paths from the root with forward slashes, of the given endings, under the given folder.</summary>
    public static IEnumerable<string> Files(string folder, params string[] endings) => All.Value.Where(path =>
        path.StartsWith(folder, StringComparison.Ordinal) && endings.Any(ending => path.EndsWith(ending, StringComparison.Ordinal)));

    public static bool Has(string path) => File.Exists(Repository.PathOf(path)) || Directory.Exists(Repository.PathOf(path));

    public static string Read(string path) => File.ReadAllText(Repository.PathOf(path));

    public static string[] Lines(string path) => File.ReadAllLines(Repository.PathOf(path));

    private static IEnumerable<string> Under(DirectoryInfo folder)
    {
        foreach (var file in folder.EnumerateFiles())
            yield return Path.GetRelativePath(Repository.Root, file.FullName).Replace('\\', '/');

        foreach (var inner in folder.EnumerateDirectories().Where(inner => !Left.Contains(inner.Name)).SelectMany(Under))
            yield return inner;
    }
}
