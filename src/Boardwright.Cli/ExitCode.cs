namespace Boardwright.Cli;

/// <summary>How the program ends.</summary>
public static class ExitCode
{
    public const int Done = 0;
    public const int Defect = 1;
    public const int Refused = 2;
    public const int NoAnswer = 3;
}
