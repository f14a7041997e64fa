// A page of a lesson as blocks of type that belong together, each measured for a width.
#pragma once

#include "explain/lesson.h"
#include "teach/projector_layout.h"
#include "teach/step_content.h"

namespace firn::app {

/// Something that cannot be split, and how to say it.
struct ProjectedBlock {
    ProjectedKind kind = ProjectedKind::Text;
    FormulaBox box;
    QString spoken;
};

/// Blocks that are shown together.
using BlockGroup = std::vector<ProjectedBlock>;

class BlockSetter {
public:
    /// Texts higher than `tallest` pixels are several blocks.
    BlockSetter(const ProjectorType& type, const HiddenAnswers& hidden, double tallest)
        : m_type(type)
        , m_hidden(hidden)
        , m_tallest(tallest)
    {
    }

    std::vector<ProjectedBlock> text(
        const QString& text, const QFont& font, double room, Lettering lettering, ProjectedKind kind = ProjectedKind::Text) const;

    /// What each step finds, its formula, the same with values, and what its symbols mean where no step before has said it.
    std::vector<BlockGroup> steps(const std::vector<WorkingStep>& steps, double room) const;
    std::vector<BlockGroup> conclusions(const std::vector<Conclusion>& conclusions, double room) const;

private:
    BlockGroup step(const StepContent& content, const std::vector<SymbolLine>& symbols, bool isSourceNew, double room) const;
    ProjectedBlock formula(const Formula& formula, double room) const;
    std::vector<ProjectedBlock> inBlocks(std::vector<FormulaBox> lines, const QString& spoken, ProjectedKind kind) const;

    const ProjectorType& m_type;
    const HiddenAnswers& m_hidden;
    double m_tallest;
};

}  // namespace firn::app
