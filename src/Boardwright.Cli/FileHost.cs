using Boardwright.Quantities;
using Boardwright.Yard.Commands;

namespace Boardwright.Cli;

/// <summary>Files as the person at the terminal names them; a single dash is standard input.</summary>
public sealed class FileHost(TextReader input) : IAskHost
{
    private const long BytesMax = 64 * 1024 * 1024;

    public Outcome<string> ReadFile(string what, string path)
    {
        if (path == "-")
        {
            return input.ReadToEnd();
        }

        var file = new FileInfo(path);
        if (!file.Exists)
        {
            return new Refusal(what, path, "a file that exists, or - for standard input");
        }

        return file.Length > BytesMax ? new Refusal(what, path, "a file of at most 64 MiB") : File.ReadAllText(path);
    }
}
