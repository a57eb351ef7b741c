using Boardwright.Quantities;

namespace Boardwright.Yard.Commands;

/// <summary>What a command may reach outside itself: files named by the person who asks.</summary>
public interface IAskHost
{
    /// <summary>The text of a file; refused with <paramref name="what"/> when it cannot be read.</summary>
    Outcome<string> ReadFile(string what, string path);
}
