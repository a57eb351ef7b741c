namespace Boardwright.Yard.UseCases;

/// <summary>Addresses of pages that several use cases lead to.</summary>
public static class Paths
{
    public static string Log(string tag) => $"/logs/{tag}";
}
