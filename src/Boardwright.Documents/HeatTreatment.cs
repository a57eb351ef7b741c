namespace Boardwright.Documents;

/// <summary>Whether the record proves that the core was hot for long enough. Unproven wood is not treated wood.</summary>
public enum HeatTreatment
{
    Unproven,
    No,
    Yes,
}
