@echo off
rem Starts Peakproof on Windows: finds Java, passes arguments and exit code on.
setlocal
set "HERE=%~dp0"
set "HERE=%HERE:~0,-1%"
set "JAR=%HERE%\peakproof.jar"
if not exist "%JAR%" (
  echo peakproof: there is no peakproof.jar beside this file. Unpack the whole archive, then try again. 1>&2
  exit /b 5
)

set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
"%JAVA%" -version >nul 2>&1
if errorlevel 1 (
  echo peakproof: needs Java 17 or newer. Install it, or set JAVA_HOME to it. 1>&2
  exit /b 5
)

rem An archive of loaded classes, made by 'peakproof warm', halves the time of a start; Java passes over one that does not fit.
set "PEAKPROOF_ARCHIVE=%LOCALAPPDATA%\peakproof\peakproof.jsa"
set "FROM_ARCHIVE="
if exist "%PEAKPROOF_ARCHIVE%" set FROM_ARCHIVE="-XX:SharedArchiveFile=%PEAKPROOF_ARCHIVE%"

rem Java's own exit codes must not pass for ours, so the program adds 100 to its own.
"%JAVA%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -XX:CICompilerCount=1 -Xmn96m -Xmx512m -Xshare:auto -Xlog:disable %FROM_ARCHIVE% "-Dpeakproof.home=%HERE%" -Dpeakproof.exit=100 -jar "%JAR%" %*
set CODE=%ERRORLEVEL%
if %CODE% geq 100 if %CODE% leq 105 (
  set /a CODE=%CODE%-100
  goto end
)
echo peakproof: Java ended by itself with code %CODE%, before or beside the program; the lines above may say why. 1>&2
set CODE=5
:end
exit /b %CODE%
