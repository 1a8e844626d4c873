using System.Text;

namespace Floorplan.Cli.Output.Drawings;

/// <summary>What <c>draw</c> can write.</summary>
internal enum DrawFormat
{
    Svg,
    Pdf,
    Png,
    Dxf,
}

/// <summary>One file of a drawing, made but not yet written.</summary>
/// <param name="Name">Without its folder.</param>
internal sealed record DrawnFile(string Name, byte[] Content)
{
    public static DrawnFile OfText(string name, string content) => new(name, Encoding.UTF8.GetBytes(content));
}
