namespace Boardwright.Yard.UseCases;

/// <summary>The mark of a source in words a mill owner reads.</summary>
public static class SourceMark
{
    /// <summary>P, M, C and I of the tables: seen in print, from memory of the source, common practice, invented.</summary>
    public static string Words(string? mark) => mark switch
    {
        "P" => "seen in print",
        "M" => "from memory of the source",
        "C" => "common practice, no source",
        "I" => "invented",
        null or "" => "not marked",
        _ => mark,
    };
}
