using Floorplan.Language.Syntax.Statements;
using Floorplan.Model.Binding.Drafts;

namespace Floorplan.Model.Binding.Services;

/// <summary>Makes service points from one kind of statement.</summary>
internal interface IServiceMaker
{
    Type Reads { get; }

    IEnumerable<ServiceDraft> Read(Statement statement);
}
