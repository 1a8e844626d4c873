using Floorplan.Language.Text;

namespace Floorplan.Model.Rates;

/// <summary>What one unit of something costs or sells for, or another figure of the owner such as days a year.</summary>
/// <param name="What"><c>wall lining</c>, <c>water</c>, <c>fish</c>.</param>
/// <param name="Unit">As written: <c>m2</c>, <c>each</c>, <c>h</c>.</param>
/// <param name="High">No less than <paramref name="Low"/>.</param>
/// <param name="Span">Where it stands, in the plan or in the rates file.</param>
public sealed record Rate(string What, string Unit, double Low, double High, SourceSpan Span);
