using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>Reads sizes from columns whose name ends in their unit, so that a bare number is right there.</summary>
internal static class SizeColumn
{
    /// <summary>A size above zero; a refusal names file, line and column.</summary>
    /// <param name="row">The row.</param>
    /// <param name="column">The column, named with its unit.</param>
    /// <param name="metresPerUnit">Metres in one of the column's unit.</param>
    /// <param name="metresMax">Largest size that makes sense there.</param>
    public static Outcome<Length> Size(this CsvRow row, string column, double metresPerUnit, double metresMax) => row.Number(column).Then<Length>(number =>
        number > 0.0 && number * metresPerUnit <= metresMax
            ? Length.FromMetres(number * metresPerUnit)
            : new Refusal($"{row.What}, line {row.Line}, {column}", row.Text(column), string.Create(CultureInfo.InvariantCulture, $"above 0 and up to {metresMax / metresPerUnit:0.#}")));
}
