using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Labels;

/// <summary>
/// Finds a place for every text of a sheet so that no two texts overlap and no heavier line or arrowhead cuts one. What is already
/// in the scene counts: fixed texts, heavy lines and dark areas are avoided always, thin lines where possible. Same input, same places.
/// </summary>
public sealed class LabelPlacer(SceneBuilder scene)
{
    private readonly List<LabelRequest> _requests = [];
    private readonly List<PaperBox> _keepOuts = [];

    public SceneBuilder Scene => scene;

    public void Add(LabelRequest request) => _requests.Add(request);

    /// <summary>No text may stand here.</summary>
    public void KeepOut(PaperBox box) => _keepOuts.Add(box);

    /// <summary>Draws all labels into the scene, within <paramref name="area"/>. Call once, when everything else of the views is drawn.</summary>
    public IReadOnlyList<LabelResult> Place(PaperBox area) => throw new NotImplementedException();
}
