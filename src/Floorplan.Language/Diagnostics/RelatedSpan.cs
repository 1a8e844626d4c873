using Floorplan.Language.Text;

namespace Floorplan.Language.Diagnostics;

/// <summary>A second place that explains a mistake, and what it has to do with it.</summary>
public sealed record RelatedSpan(SourceSpan Span, string Message);
