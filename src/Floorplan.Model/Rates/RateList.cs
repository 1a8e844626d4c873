using Floorplan.Language.Text;

namespace Floorplan.Model.Rates;

/// <summary>The owner's file of rates, as far as it could be read.</summary>
/// <param name="File">As the plan names it.</param>
/// <param name="Currency">A word or a sign, printed as it is; empty when not said.</param>
/// <param name="Span">Where the plan names it.</param>
public sealed record RateList(string File, string Currency, IReadOnlyList<Rate> Rows, SourceSpan Span);
