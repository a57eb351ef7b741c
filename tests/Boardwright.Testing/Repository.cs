namespace Boardwright.Testing;

/// <summary>Where the checkout is, found from the test's own folder.</summary>
public static class Repository
{
    public static string Root { get; } = Find();

    public static string PathOf(params string[] parts) => Path.Combine([Root, .. parts]);

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Boardwright.slnx")))
            {
                return folder.FullName;
            }
        }

        throw new InvalidOperationException($"No Boardwright.slnx above {AppContext.BaseDirectory}.");
    }
}
