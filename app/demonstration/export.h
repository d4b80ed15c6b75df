#pragma once

#include "app/demonstration/demonstration.h"
#include "app/document/disk.h"

#include <QSizeF>
#include <QString>
#include <QStringList>

/// Moments on paper and in files. @return of the writing ones: what went wrong; empty: done.
namespace siphonwright::demonstration {

/// The moment with its title and words under it, fitted into an area. The painter's unit is 1 mm.
void paintCaptioned(QPainter& painter, const QRectF& area, const Sketch& sketch, const Analysis& analysis,
                    const Moment& moment, const drawing::Style& style);

/// By the file's suffix: .png (1920 x 1080) or .svg.
QStringList exportMoment(const QString& path, const Sketch& sketch, const Analysis& analysis,
                         const Moment& moment, const drawing::Style& style, const PutFile& put = putFile);

/// Every so manieth moment, a fifth of that with the heater on (hours pass there), and every one at which
/// something happens; the last one too.
std::vector<std::size_t> sequenceOf(const Demonstration& demonstration, std::size_t every = 1);

/// Where pictures are to go, made if it is not there.
QStringList makeFolder(const QString& folder);

/// Those as moment-0001.png and so on into a folder.
QStringList exportSequence(const QString& folder, const Sketch& sketch, const Analysis& analysis,
                           const Demonstration& demonstration, const drawing::Style& style,
                           std::size_t every = 1, const PutFile& put = putFile);

/// Six moments that tell the story: the start, what seals the air, the end of filling, the engine run, and
/// the heater on after half an hour and at the end. Fewer if there are not as many.
std::vector<std::size_t> sixMoments(const Demonstration& demonstration);

/// One page as PDF: the six with their captions. A4, or Letter where the drawing is in inches.
QStringList exportHandout(const QString& path, const Sketch& sketch, const Analysis& analysis,
                          const Demonstration& demonstration, const PutFile& put = putFile);

} // namespace siphonwright::demonstration
