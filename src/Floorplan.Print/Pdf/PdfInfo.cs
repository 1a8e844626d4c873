namespace Floorplan.Print.Pdf;

/// <summary>What a PDF says about itself.</summary>
/// <param name="Date">From the plan's last revision, never from the clock; null writes no date.</param>
public sealed record PdfInfo(string Title, string Author, string Subject, DateTime? Date);
