@echo off
rem Starts gaugeglass from an unpacked release. Written with care, but not tried on Windows.
rem Environment: JAVA_HOME (else java from the PATH), GAUGEGLASS_JAVA_OPTS (more options for the JVM).
rem Exit code 4 when there is no Java; nothing was judged then.
setlocal
set "HERE=%~dp0"
if defined JAVA_HOME (
    set "JAVA=%JAVA_HOME%\bin\java.exe"
) else (
    set "JAVA=java.exe"
)
"%JAVA%" -version >nul 2>&1
if errorlevel 1 (
    echo gaugeglass: no Java was found; Java 17 or newer is needed. 1>&2
    echo gaugeglass: install one, or set JAVA_HOME to the folder of one that is there already. 1>&2
    exit /b 4
)
"%JAVA%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xshare:auto -Dfile.encoding=UTF-8 "-Dgaugeglass.workshop=%HERE%..\workshop" %GAUGEGLASS_JAVA_OPTS% -cp "%HERE%..\lib\*" gaugeglass.cli.Main %*
exit /b %ERRORLEVEL%
