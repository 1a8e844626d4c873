namespace Floorplan.Drawing.Labels;

/// <summary>How hard a place for a label is looked for.</summary>
internal enum LabelCare
{
    /// <summary>Its leader crosses no other.</summary>
    Usual,

    /// <summary>The same, at more places.</summary>
    Fine,

    /// <summary>Its leader may cross others.</summary>
    Loose,
}
