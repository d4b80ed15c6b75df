#pragma once

#include <QByteArray>

namespace siphonwright::sheet {

/// An SVG as Qt writes it, with the program's lettering in it, so that it looks the same where that is not
/// installed; and with the width that each text has to have, for readers that take fonts of their own.
QByteArray withFonts(const QByteArray& svg);

} // namespace siphonwright::sheet
